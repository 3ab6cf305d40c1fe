-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT lot.id
FROM delivery
JOIN lot ON lot.delivery_id = delivery.id
WHERE delivery.request_key = :request_key
ORDER BY lot.id
