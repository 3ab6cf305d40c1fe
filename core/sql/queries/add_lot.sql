-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO lot (
    tag, article_id, kind, owner_customer_id, nominal_mm, price_minor, shipping_minor, currency, batch, received_at,
    closed_at, delivery_id)
VALUES (
    :tag, :article, :kind, :owner, :nominal_mm, :price_minor, :shipping_minor, :currency, :batch, :received_at,
    :closed_at, :delivery)
RETURNING id
