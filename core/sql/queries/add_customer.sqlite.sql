-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO customer (request_key, name, search_key, created_at)
VALUES (:request_key, :name, :search_key, CAST(strftime('%s', 'now') AS INTEGER) * 1000)
RETURNING id
