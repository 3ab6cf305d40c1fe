-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.id, CAST(SUM(-movement.change_mm) AS BIGINT) AS taken_mm
FROM movement
JOIN lot ON lot.id = movement.lot_id
JOIN attempt ON attempt.id = movement.attempt_id
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job ON job.id = job_piece.job_id
WHERE lot.article_id = :article
  AND lot.kind <> 'packet'
  AND movement.reason = 'cut'
  AND attempt.lost_at IS NULL
  AND job.state IN ('strung', 'collected')
  AND NOT EXISTS (
      SELECT 1
      FROM job_piece AS other
      WHERE other.job_id = job.id
        AND (other.article_id <> :article OR other.source = 'customers-set'))
GROUP BY job.id, job.logged_at
ORDER BY job.logged_at DESC, job.id DESC
LIMIT :at_most
