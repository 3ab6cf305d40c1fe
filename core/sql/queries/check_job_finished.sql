-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', ' || job_piece.role || ': ' || job.state || ', and not cut' AS what
FROM job
JOIN job_piece ON job_piece.job_id = job.id
WHERE job.state IN ('strung', 'collected')
    AND NOT EXISTS (
        SELECT 1
        FROM attempt
        JOIN job_event ON job_event.attempt_id = attempt.id AND job_event.kind = 'cut'
        WHERE attempt.job_piece_id = job_piece.id AND attempt.lost_at IS NULL)
ORDER BY job_piece.id
