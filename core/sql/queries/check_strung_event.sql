-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', event ' || job_event.id || ': strung, and nothing says how' AS what
FROM job_event
JOIN job ON job.id = job_event.job_id
WHERE job_event.kind = 'strung'
    AND NOT EXISTS (
        SELECT 1 FROM strung WHERE strung.job_event_id = job_event.id AND strung.job_id = job_event.job_id)
ORDER BY job_event.id
