-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', event ' || told.event_id || ': ' || told.words AS what
FROM (
    SELECT job_event.job_id, job_event.id AS event_id, 'collected, and nothing says by whom' AS words
    FROM job_event
    WHERE job_event.kind = 'collected'
        AND NOT EXISTS (SELECT 1 FROM handover WHERE handover.job_event_id = job_event.id)
    UNION ALL
    SELECT handover.job_id, job_event.id,
        CASE WHEN job_event.job_id <> handover.job_id THEN 'handed over, by an event of another job'
            ELSE 'handed over, by an event that is ' || job_event.kind END
    FROM handover
    JOIN job_event ON job_event.id = handover.job_event_id
    WHERE job_event.job_id <> handover.job_id OR job_event.kind <> 'collected'
) AS told
JOIN job ON job.id = told.job_id
ORDER BY told.event_id, told.words
