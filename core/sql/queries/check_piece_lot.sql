-- SPDX-License-Identifier: GPL-3.0-or-later
-- Who brought string may be helped out with the shop's; who pays for the shop's string keeps their own.
SELECT 'job ' || job.number || ', ' || job_piece.role || ': planned off lot ' || lot.tag || ', which is '
    || CASE WHEN lot.article_id <> job_piece.article_id THEN 'another string'
        WHEN lot.owner_customer_id <> job.customer_id THEN 'somebody else''s'
        ELSE 'the customer''s own' END AS what
FROM job_piece
JOIN job ON job.id = job_piece.job_id
JOIN lot ON lot.id = job_piece.lot_id
WHERE lot.article_id <> job_piece.article_id
    OR (lot.owner_customer_id IS NOT NULL
        AND (lot.owner_customer_id <> job.customer_id OR job_piece.source = 'shop-lot'))
ORDER BY job_piece.id
