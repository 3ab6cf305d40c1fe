-- SPDX-License-Identifier: GPL-3.0-or-later
-- Bounded on both sides before anything is joined: the newest jobs of one frame, and the newest tails of the sport.
WITH of_frame AS (
    SELECT job.id
    FROM job
    JOIN racket ON racket.id = job.racket_id
    WHERE racket.frame_model_id = :frame
    ORDER BY job.id DESC
    LIMIT :jobs
),
elsewhere AS (
    SELECT tails.attempt_id AS id
    FROM tails
    JOIN attempt ON attempt.id = tails.attempt_id
    JOIN job_piece ON job_piece.id = attempt.job_piece_id
    JOIN job ON job.id = job_piece.job_id
    JOIN racket ON racket.id = job.racket_id
    JOIN frame_model ON frame_model.id = racket.frame_model_id
    WHERE frame_model.sport = :sport
      AND racket.frame_model_id <> :frame
      AND NOT EXISTS (SELECT 1 FROM tails AS newer WHERE newer.attempt_id = tails.attempt_id AND newer.id > tails.id)
    ORDER BY tails.id DESC
    LIMIT :elsewhere
),
wanted AS (
    SELECT attempt.id
    FROM of_frame
    JOIN job_piece ON job_piece.job_id = of_frame.id
    JOIN attempt ON attempt.job_piece_id = job_piece.id
    UNION
    SELECT elsewhere.id
    FROM elsewhere
)
SELECT job.id AS job_id, job.number, racket.frame_model_id, cut.at, job.method, job.route, job.short_side_mm,
       COALESCE(strung.mains_hundredths, job.mains_hundredths) AS mains_hundredths,
       COALESCE(strung.mains_unit, job.mains_unit) AS mains_unit,
       COALESCE(strung.crosses_hundredths, job.crosses_hundredths) AS crosses_hundredths,
       COALESCE(strung.crosses_unit, job.crosses_unit) AS crosses_unit,
       job_piece.role,
       COALESCE((SELECT half.article_id FROM job_piece AS half WHERE half.job_id = job.id AND half.role = 'mains'),
                job_piece.article_id) AS mains_article_id,
       COALESCE((SELECT half.article_id FROM job_piece AS half WHERE half.job_id = job.id AND half.role = 'crosses'),
                job_piece.article_id) AS crosses_article_id,
       -cut.change_mm AS cut_mm,
       CASE WHEN (SELECT SUM(until_then.change_mm)
                  FROM movement AS until_then
                  WHERE until_then.lot_id = cut.lot_id AND until_then.id <= cut.id) = 0
            THEN 1 ELSE 0 END AS all_there_was,
       CASE WHEN attempt.lost_at IS NULL THEN 0 ELSE 1 END AS came_short,
       piece_tails.low_mm, piece_tails.high_mm,
       side_tails.low_mm AS short_side_low_mm, side_tails.high_mm AS short_side_high_mm
FROM wanted
JOIN attempt ON attempt.id = wanted.id
JOIN movement AS cut ON cut.attempt_id = attempt.id AND cut.reason = 'cut'
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job ON job.id = job_piece.job_id
JOIN racket ON racket.id = job.racket_id
LEFT JOIN strung
    ON strung.job_event_id = (SELECT MAX(last.job_event_id) FROM strung AS last WHERE last.job_id = job.id)
LEFT JOIN tails AS piece_tails
    ON piece_tails.id = (SELECT MAX(told.id) FROM tails AS told
                         WHERE told.attempt_id = attempt.id AND told.part = 'piece')
LEFT JOIN tails AS side_tails
    ON side_tails.id = (SELECT MAX(told.id) FROM tails AS told
                        WHERE told.attempt_id = attempt.id AND told.part = 'short-side')
WHERE ((attempt.lost_at IS NULL AND job.state IN ('strung', 'collected')) OR attempt.lost_reason = 'came-short')
  AND NOT EXISTS (SELECT 1 FROM movement AS back WHERE back.corrects_id = cut.id)
ORDER BY cut.id DESC
