-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, name, strings, retired, row_version
FROM staff
ORDER BY id
