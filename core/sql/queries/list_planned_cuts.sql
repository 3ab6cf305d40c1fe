-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT uncut_piece.job_piece_id, uncut_piece.article_id, uncut_piece.lot_id, uncut_piece.planned_mm,
       COALESCE(lot.owner_customer_id, uncut_piece.owner_customer_id) AS owner_customer_id
FROM uncut_piece
LEFT JOIN lot ON lot.id = uncut_piece.lot_id
WHERE uncut_piece.source <> 'customers-set'
ORDER BY uncut_piece.job_piece_id
