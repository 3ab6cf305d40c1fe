-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO job (
    number, request_key, customer_id, racket_id, method, route, short_side, short_side_mm, mains_hundredths,
    mains_unit, crosses_hundredths, crosses_unit, promised_at, must_by, logged_at, currency)
VALUES (
    COALESCE(:number, (SELECT COALESCE(MAX(number), 1000) + 1 FROM job)),
    :request_key, :customer, :racket, :method, :route, :short_side, :short_side_mm, :mains_hundredths,
    :mains_unit, :crosses_hundredths, :crosses_unit, :promised_at, :must_by, :logged_at, :currency)
RETURNING id
