-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ': "' || job.state || '" in the book, "' || coalesce(told.state, '')
    || '" by its events' AS what
FROM job
LEFT JOIN (
    SELECT job_event.job_id, min(job_transition.to_state) AS state
    FROM job_event
    JOIN job_transition ON job_transition.kind = job_event.kind
    WHERE job_event.id IN (SELECT max(id) FROM job_event GROUP BY job_id)
    GROUP BY job_event.job_id
) AS told ON told.job_id = job.id
WHERE told.state IS NULL OR job.state <> told.state
ORDER BY job.id
