-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', ' || job_piece.role || ': cut off lot ' || lot.tag
    || ', which is somebody else''s' AS what
FROM movement
JOIN attempt ON attempt.id = movement.attempt_id
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job ON job.id = job_piece.job_id
JOIN lot ON lot.id = movement.lot_id
WHERE lot.owner_customer_id IS NOT NULL AND lot.owner_customer_id <> job.customer_id
ORDER BY movement.id
