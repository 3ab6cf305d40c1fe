-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, valid_from, currency, tax_rule
FROM price_list
ORDER BY valid_from DESC, id DESC
