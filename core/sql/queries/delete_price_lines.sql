-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM price_line
WHERE price_list_id = :price_list
