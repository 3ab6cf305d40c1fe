-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job_event_id, taken_by, on_account
FROM handover
WHERE job_id = :job
ORDER BY job_event_id DESC
LIMIT 1
