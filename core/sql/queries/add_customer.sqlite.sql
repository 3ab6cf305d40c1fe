-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO customer (name, search_key, created_at)
VALUES (:name, :search_key, CAST(strftime('%s', 'now') AS INTEGER) * 1000)
RETURNING id
