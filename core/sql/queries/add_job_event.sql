-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO job_event (job_id, kind, at, staff_id, station, machine_id, attempt_id)
VALUES (:job, :kind, :at, :staff, :station, :machine, :attempt)
RETURNING id
