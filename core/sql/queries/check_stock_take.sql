-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'stock-take ' || stock_take.id || ': goes on beside ' || first.id AS what
FROM stock_take
JOIN (SELECT min(id) AS id FROM stock_take WHERE ended_at IS NULL) AS first ON first.id < stock_take.id
WHERE stock_take.ended_at IS NULL
ORDER BY stock_take.id
