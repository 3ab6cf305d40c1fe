-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT lot.article_id, lot.kind, lot.nominal_mm, lot.price_minor, lot.shipping_minor, lot.currency,
       coalesce(delivery.supplier, '') AS supplier, delivery.shipping_minor AS parcel_minor
FROM lot
LEFT JOIN delivery ON delivery.id = lot.delivery_id
WHERE lot.id = (
    SELECT newest.id
    FROM lot AS newest
    WHERE newest.article_id = lot.article_id
        AND newest.owner_customer_id IS NULL
        AND newest.kind <> 'remnant'
    ORDER BY newest.received_at DESC, newest.id DESC
    LIMIT 1)
ORDER BY lot.article_id
