-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO note (job_id, words, at)
SELECT job_event.job_id, :words, MAX(job_event.at)
FROM job_event
WHERE job_event.job_id = :job
GROUP BY job_event.job_id
RETURNING id
