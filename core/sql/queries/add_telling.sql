-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO telling (job_id, how, at, staff_id, station)
VALUES (:job, :how, :at, :staff, :station)
