-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, name
FROM staff
ORDER BY id
