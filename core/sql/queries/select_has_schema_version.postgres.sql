-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT CASE WHEN to_regclass('schema_version') IS NULL THEN 0 ELSE 1 END AS tables
