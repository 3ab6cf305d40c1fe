-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id
FROM job
WHERE customer_id = :customer
ORDER BY logged_at DESC, id DESC
