-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT version, name
FROM schema_version
ORDER BY version
