-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT customer.id, customer.name, customer.search_key, customer.row_version, customer.removed_at,
       contact.id AS contact_id, contact.kind, contact.text
FROM (
    SELECT candidate.id, candidate.name, candidate.search_key, candidate.row_version, candidate.removed_at
    FROM customer AS candidate
    WHERE candidate.removed_at IS NULL
      AND ((candidate.search_key LIKE :word1 ESCAPE '!'
            AND candidate.search_key LIKE :word2 ESCAPE '!'
            AND candidate.search_key LIKE :word3 ESCAPE '!'
            AND candidate.search_key LIKE :word4 ESCAPE '!')
           OR EXISTS (
               SELECT 1
               FROM contact AS phone
               WHERE phone.customer_id = candidate.id
                 AND phone.kind = 'phone'
                 AND phone.digits LIKE :digits ESCAPE '!'))
    ORDER BY candidate.search_key, candidate.id
    LIMIT :at_most
) AS customer
LEFT JOIN contact ON contact.customer_id = customer.id
ORDER BY customer.search_key, customer.id, contact.id
