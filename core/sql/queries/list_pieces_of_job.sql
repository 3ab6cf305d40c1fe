-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job_piece.id, job_piece.role, job_piece.article_id, job_piece.source, job_piece.lot_id, job_piece.pinned,
       job_piece.planned_mm, job_piece.expected_mm, job_piece.set_mm,
       attempt.id AS attempt_id, attempt.number AS attempt_number, attempt.lost_reason,
       cut.lot_id AS cut_lot_id, cut_lot.tag AS cut_lot_tag, -cut.change_mm AS cut_mm, cut.at AS cut_at,
       CASE WHEN (SELECT SUM(until_then.change_mm)
                  FROM movement AS until_then
                  WHERE until_then.lot_id = cut.lot_id AND until_then.id <= cut.id) = 0
            THEN 1 ELSE 0 END AS all_there_was,
       CASE WHEN EXISTS (SELECT 1 FROM movement AS back WHERE back.corrects_id = cut.id)
            THEN 1 ELSE 0 END AS taken_back,
       (SELECT MIN(job_event.at)
        FROM job_event
        WHERE job_event.attempt_id = attempt.id AND job_event.kind = 'cut') AS cut_event_at
FROM job_piece
LEFT JOIN attempt ON attempt.job_piece_id = job_piece.id
LEFT JOIN movement AS cut ON cut.attempt_id = attempt.id AND cut.reason = 'cut'
LEFT JOIN lot AS cut_lot ON cut_lot.id = cut.lot_id
WHERE job_piece.job_id = :job
ORDER BY CASE job_piece.role WHEN 'mains' THEN 0 WHEN 'crosses' THEN 1 ELSE 2 END, job_piece.id, attempt.number
