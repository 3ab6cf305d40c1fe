-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT customer.id, customer.name, customer.row_version, customer.removed_at,
       contact.id AS contact_id, contact.kind, contact.text
FROM customer
LEFT JOIN contact ON contact.customer_id = customer.id
WHERE customer.id = :customer
ORDER BY contact.id
