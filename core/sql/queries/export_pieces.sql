-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.number AS job,
       job_piece.role,
       string_article.code AS string,
       job_piece.source,
       job_piece.planned_mm,
       attempt.number AS attempt,
       -movement.change_mm AS cut_mm,
       lot.tag AS lot,
       attempt.lost_reason,
       tails.low_mm AS tails_low_mm,
       tails.high_mm AS tails_high_mm
FROM job_piece
JOIN job ON job.id = job_piece.job_id
JOIN string_article ON string_article.id = job_piece.article_id
JOIN attempt ON attempt.job_piece_id = job_piece.id
LEFT JOIN movement ON movement.attempt_id = attempt.id AND movement.reason = 'cut'
LEFT JOIN lot ON lot.id = movement.lot_id
LEFT JOIN tails
    ON tails.id = (SELECT MAX(told.id) FROM tails AS told WHERE told.attempt_id = attempt.id AND told.part = 'piece')
ORDER BY job.number, job_piece.id, attempt.number
