-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO delivery (request_key, supplier, shipping_minor, currency, at, staff_id, station)
VALUES (:request_key, :supplier, :shipping_minor, :currency, :at, :staff, :station)
RETURNING id
