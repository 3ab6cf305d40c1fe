-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, customer_id
FROM customer_change
WHERE id > :seen
ORDER BY id
