-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT count(*) AS tables
FROM sqlite_schema
WHERE type = 'table' AND name = 'schema_version'
