-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO handover (job_id, job_event_id, taken_by, on_account)
VALUES (:job, :event, :taken_by, :on_account)
