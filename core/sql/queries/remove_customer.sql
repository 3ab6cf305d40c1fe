-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE customer
SET name = '-', search_key = '', removed_at = :at, row_version = row_version + 1
WHERE id = :customer
