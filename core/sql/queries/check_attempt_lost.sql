-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', ' || job_piece.role || ', attempt ' || attempt.number
    || ': lost, and never cut' AS what
FROM attempt
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job ON job.id = job_piece.job_id
WHERE attempt.lost_at IS NOT NULL
    AND NOT EXISTS (SELECT 1 FROM movement WHERE attempt_id = attempt.id AND reason = 'cut')
    AND NOT EXISTS (SELECT 1 FROM job_event WHERE attempt_id = attempt.id AND kind = 'cut')
ORDER BY attempt.id
