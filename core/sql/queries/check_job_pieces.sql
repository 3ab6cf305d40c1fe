-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ': ' || job.method || ', with ' || made.pieces || ' pieces, ' || made.wholes
    || ' of them whole, ' || made.untried || ' without an attempt' AS what
FROM (
    SELECT job.id AS job_id, count(job_piece.id) AS pieces,
        sum(CASE WHEN job_piece.role = 'whole' THEN 1 ELSE 0 END) AS wholes,
        sum(CASE WHEN job_piece.id IS NULL
            OR EXISTS (SELECT 1 FROM attempt WHERE attempt.job_piece_id = job_piece.id) THEN 0 ELSE 1 END) AS untried
    FROM job
    LEFT JOIN job_piece ON job_piece.job_id = job.id
    GROUP BY job.id
) AS made
JOIN job ON job.id = made.job_id
WHERE made.untried > 0
    OR (job.method = 'one-piece' AND NOT (made.pieces = 1 AND made.wholes = 1))
    OR (job.method = 'two-piece' AND NOT (made.pieces = 2 AND made.wholes = 0))
ORDER BY job.id
