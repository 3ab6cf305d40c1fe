-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', ' || job_piece.role || ', attempt ' || attempt.number || ': cut '
    || charged.times || ' times' AS what
FROM (
    SELECT attempt_id, count(*) AS times
    FROM movement
    WHERE reason = 'cut'
    GROUP BY attempt_id
    HAVING count(*) > 1
) AS charged
JOIN attempt ON attempt.id = charged.attempt_id
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job ON job.id = job_piece.job_id
ORDER BY attempt.id
