-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT DISTINCT supplier
FROM delivery
WHERE supplier <> ''
ORDER BY supplier
