-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id
FROM customer_change
ORDER BY id DESC
LIMIT 1
