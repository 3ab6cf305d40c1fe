-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO price_line (
    price_list_id, line, kind, sport, method, article_id, label, amount_minor, tax_hundredths_percent, cost_minor)
VALUES (
    :price_list, :line, :kind, :sport, :method, :article, :label, :amount_minor, :tax_hundredths_percent, :cost_minor)
RETURNING id
