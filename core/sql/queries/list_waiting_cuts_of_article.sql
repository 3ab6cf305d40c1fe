-- SPDX-License-Identifier: GPL-3.0-or-later
-- The plus signs keep SQLite from beginning with all pieces that were ever cut of the article: few jobs wait.
SELECT uncut_piece.job_piece_id, uncut_piece.job_id, job.number, uncut_piece.role, uncut_piece.lot_id,
       uncut_piece.owner_customer_id, uncut_piece.planned_mm, uncut_piece.pinned,
       CASE WHEN job.state = 'on-the-machine' OR EXISTS (
               SELECT 1
               FROM job_piece AS other
               JOIN attempt ON attempt.job_piece_id = other.id AND attempt.lost_at IS NULL
               JOIN movement ON movement.attempt_id = attempt.id AND movement.reason = 'cut'
               WHERE other.job_id = uncut_piece.job_id AND +other.article_id = uncut_piece.article_id)
           THEN 1 ELSE 0 END AS begun
FROM uncut_piece
JOIN job ON job.id = uncut_piece.job_id
WHERE +uncut_piece.article_id = :article AND uncut_piece.source <> 'customers-set'
ORDER BY job.promised_at NULLS LAST, job.number, uncut_piece.job_piece_id
