-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT customer.id AS customer,
       customer.name,
       customer.created_at AS added,
       customer.removed_at AS removed
FROM customer
ORDER BY customer.id
