-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE customer
SET name = :name, search_key = :search_key, row_version = row_version + 1
WHERE id = :customer AND row_version = :version
