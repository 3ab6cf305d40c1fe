-- SPDX-License-Identifier: GPL-3.0-or-later
-- Each kind of event leads to one state, so the event before tells the state that this one met.
SELECT 'job ' || job.number || ', event ' || step.id || ': ' || step.kind || ' after '
    || coalesce(step.previous_kind, 'nothing') AS what
FROM (
    SELECT id, job_id, kind, lag(kind) OVER (PARTITION BY job_id ORDER BY id) AS previous_kind
    FROM job_event
) AS step
JOIN job ON job.id = step.job_id
WHERE NOT EXISTS (
    SELECT 1
    FROM job_transition
    WHERE job_transition.kind = step.kind
        AND job_transition.from_state = coalesce(
            (SELECT min(earlier.to_state) FROM job_transition AS earlier WHERE earlier.kind = step.previous_kind), ''))
ORDER BY step.id
