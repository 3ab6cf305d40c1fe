-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', event ' || job_event.id || ': written down as strung, by an event that is '
    || CASE WHEN job_event.job_id <> strung.job_id THEN 'another job''s' ELSE job_event.kind END AS what
FROM strung
JOIN job_event ON job_event.id = strung.job_event_id
JOIN job ON job.id = strung.job_id
WHERE job_event.job_id <> strung.job_id OR job_event.kind <> 'strung'
ORDER BY job_event.id
