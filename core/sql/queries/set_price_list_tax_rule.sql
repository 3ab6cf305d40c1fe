-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE price_list
SET tax_rule = :tax_rule
WHERE id = :price_list
