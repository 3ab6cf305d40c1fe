-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT type, name, sql
FROM sqlite_schema
WHERE name NOT LIKE 'sqlite\_%' ESCAPE '\'
ORDER BY type, name
