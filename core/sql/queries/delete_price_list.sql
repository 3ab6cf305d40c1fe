-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM price_list
WHERE id = :price_list
