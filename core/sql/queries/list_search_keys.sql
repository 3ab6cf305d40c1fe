-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT customer.id, customer.search_key, phone.digits
FROM customer
LEFT JOIN contact AS phone ON phone.customer_id = customer.id AND phone.kind = 'phone'
WHERE customer.removed_at IS NULL
ORDER BY customer.id, phone.id
