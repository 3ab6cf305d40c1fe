-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, kind, sport, method, article_id, label, amount_minor, tax_hundredths_percent, cost_minor
FROM price_line
WHERE price_list_id = :price_list
ORDER BY line, id
