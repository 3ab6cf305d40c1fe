-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, tag, article_id, kind, owner_customer_id, nominal_mm, length_mm, price_minor, shipping_minor, currency,
       batch, received_at, delivery_id, closed_at, sealed, measured_since_last_cut
FROM lot_book
WHERE closed_at IS NOT NULL AND article_id = :article
ORDER BY closed_at DESC, id DESC
