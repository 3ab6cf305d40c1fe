-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT contact.customer_id AS customer,
       contact.kind,
       contact.text AS contact_text
FROM contact
ORDER BY contact.customer_id, contact.id
