-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', ' || job_piece.role || ': ' || chain.attempts || ' attempts, the last is number '
    || chain.last_number || ', ' || chain.open_attempts || ' open' AS what
FROM (
    SELECT job_piece_id, count(*) AS attempts, max(number) AS last_number,
        sum(CASE WHEN lost_at IS NULL THEN 1 ELSE 0 END) AS open_attempts,
        max(CASE WHEN lost_at IS NULL THEN number ELSE 0 END) AS open_number
    FROM attempt
    GROUP BY job_piece_id
) AS chain
JOIN job_piece ON job_piece.id = chain.job_piece_id
JOIN job ON job.id = job_piece.job_id
WHERE chain.attempts <> chain.last_number OR chain.open_attempts <> 1 OR chain.open_number <> chain.last_number
ORDER BY job_piece.id
