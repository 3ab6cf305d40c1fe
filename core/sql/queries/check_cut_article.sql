-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', ' || job_piece.role || ': is to be ' || wanted.code || ', cut off lot ' || lot.tag
    || ', which is ' || found.code AS what
FROM movement
JOIN attempt ON attempt.id = movement.attempt_id
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job ON job.id = job_piece.job_id
JOIN lot ON lot.id = movement.lot_id
JOIN string_article AS wanted ON wanted.id = job_piece.article_id
JOIN string_article AS found ON found.id = lot.article_id
WHERE lot.article_id <> job_piece.article_id
ORDER BY movement.id
