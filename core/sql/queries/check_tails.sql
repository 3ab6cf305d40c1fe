-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', ' || job_piece.role || ', attempt ' || attempt.number
    || CASE WHEN cut.id IS NULL THEN ': tails are told of, and it was never cut'
        ELSE ': tails of ' || tails.low_mm || ' mm off a cut of ' || -cut.change_mm || ' mm' END AS what
FROM tails
JOIN attempt ON attempt.id = tails.attempt_id
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job ON job.id = job_piece.job_id
LEFT JOIN movement AS cut ON cut.attempt_id = attempt.id AND cut.reason = 'cut'
WHERE (cut.id IS NULL
        AND NOT EXISTS (SELECT 1 FROM job_event WHERE job_event.attempt_id = attempt.id AND job_event.kind = 'cut'))
    OR tails.low_mm >= -cut.change_mm
ORDER BY tails.id
