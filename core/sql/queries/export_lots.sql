-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT lot.tag,
       string_article.code AS string,
       lot.kind,
       lot.owner_customer_id AS owner,
       lot.nominal_mm,
       lot.length_mm,
       lot.price_minor AS price,
       lot.shipping_minor AS shipping,
       lot.batch,
       lot.received_at AS received,
       lot.closed_at AS closed
FROM lot
JOIN string_article ON string_article.id = lot.article_id
ORDER BY lot.id
