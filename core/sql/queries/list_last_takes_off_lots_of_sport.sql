-- SPDX-License-Identifier: GPL-3.0-or-later
-- What each job cut off each lot. The newest cuts are looked for first, so that a long ledger is not added up whole.
SELECT CAST(SUM(-recent.change_mm) AS BIGINT) AS taken_mm, MAX(recent.id) AS last_id
FROM (
    SELECT movement.id, movement.lot_id, movement.attempt_id, movement.change_mm
    FROM movement
    JOIN lot ON lot.id = movement.lot_id
    JOIN string_article ON string_article.id = lot.article_id
    WHERE movement.reason = 'cut' AND lot.kind <> 'packet' AND string_article.sport = :sport
    ORDER BY movement.id DESC
    LIMIT :cuts
) AS recent
JOIN attempt ON attempt.id = recent.attempt_id AND attempt.lost_at IS NULL
JOIN job_piece ON job_piece.id = attempt.job_piece_id
GROUP BY job_piece.job_id, recent.lot_id
ORDER BY last_id DESC
LIMIT :at_most
