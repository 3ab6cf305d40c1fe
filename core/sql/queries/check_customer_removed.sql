-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'customer ' || customer.id || ': removed, and ' || here.words AS what
FROM (
    SELECT customer_id, 'job ' || number || ' is ' || state AS words
    FROM job
    WHERE state NOT IN ('collected', 'withdrawn')
    UNION ALL
    SELECT owner_customer_id, 'lot ' || tag || ' is open'
    FROM lot
    WHERE closed_at IS NULL
) AS here
JOIN customer ON customer.id = here.customer_id
WHERE customer.removed_at IS NOT NULL
ORDER BY customer.id, here.words
