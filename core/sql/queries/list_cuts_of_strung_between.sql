-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT movement.id, job_piece.job_id, movement.change_mm, lot.price_minor + lot.shipping_minor AS landed_minor,
       lot.nominal_mm, lot.currency
FROM standing_stringing AS done
JOIN job_piece ON job_piece.job_id = done.job_id
JOIN attempt ON attempt.job_piece_id = job_piece.id
JOIN movement ON movement.attempt_id = attempt.id AND movement.reason = 'cut'
JOIN lot ON lot.id = movement.lot_id
WHERE done.at >= :from
    AND done.at < :to
    AND NOT EXISTS (SELECT 1 FROM movement AS back WHERE back.corrects_id = movement.id)
ORDER BY movement.id
