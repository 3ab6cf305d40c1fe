-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO price_list (valid_from, currency, tax_rule)
VALUES (:valid_from, :currency, :tax_rule)
RETURNING id
