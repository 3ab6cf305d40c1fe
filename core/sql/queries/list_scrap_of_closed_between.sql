-- SPDX-License-Identifier: GPL-3.0-or-later
WITH scrap AS (
    SELECT movement.lot_id, CAST(-sum(movement.change_mm) AS BIGINT) AS scrap_mm
    FROM movement
    JOIN lot ON lot.id = movement.lot_id
    WHERE lot.closed_at >= :from
        AND lot.closed_at < :to
        AND lot.owner_customer_id IS NULL
        AND (movement.reason = 'thrown-away'
            OR (movement.reason IN ('measured', 'weighed')
                AND movement.id = (SELECT max(last.id) FROM movement AS last WHERE last.lot_id = lot.id)))
        AND movement.corrects_id IS NULL
        AND NOT EXISTS (SELECT 1 FROM movement AS back WHERE back.corrects_id = movement.id)
    GROUP BY movement.lot_id
)
SELECT lot.id, lot.tag, string_article.code, scrap.scrap_mm, lot.price_minor + lot.shipping_minor AS landed_minor,
       lot.nominal_mm, lot.currency
FROM scrap
JOIN lot ON lot.id = scrap.lot_id
JOIN string_article ON string_article.id = lot.article_id
WHERE scrap.scrap_mm > 0
ORDER BY lot.closed_at, lot.id
