-- SPDX-License-Identifier: GPL-3.0-or-later
-- A cut off a lot is a movement and an event, written together. A customer's own set has the event alone.
SELECT 'job ' || job.number || ', ' || job_piece.role || ', attempt ' || attempt.number
    || CASE WHEN cut.moved = 1 THEN ': string was taken, but no cut is told of'
        ELSE ': a cut is told of, but no string was taken' END AS what
FROM (
    SELECT id,
        CASE WHEN EXISTS (SELECT 1 FROM movement WHERE attempt_id = attempt.id AND reason = 'cut')
            THEN 1 ELSE 0 END AS moved,
        CASE WHEN EXISTS (SELECT 1 FROM job_event WHERE attempt_id = attempt.id AND kind = 'cut')
            THEN 1 ELSE 0 END AS told
    FROM attempt
) AS cut
JOIN attempt ON attempt.id = cut.id
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job ON job.id = job_piece.job_id
WHERE cut.moved <> cut.told AND NOT (job_piece.source = 'customers-set' AND cut.told = 1)
ORDER BY attempt.id
