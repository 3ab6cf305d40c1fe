-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT version
FROM schema_version
ORDER BY version DESC
LIMIT 1
