-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE staff
SET name = :name, strings = :strings, retired = :retired, row_version = row_version + 1
WHERE id = :staff AND row_version = :version
