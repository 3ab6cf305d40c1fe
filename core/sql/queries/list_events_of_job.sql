-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, job_id, kind, at, staff_id, station, machine_id, attempt_id
FROM job_event
WHERE job_id = :job
ORDER BY id
