-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'delivery ' || delivery.id || ': ' || delivery.shipping_minor || ' for its shipping, '
    || coalesce(shared.sum_minor, 0) || ' on its lots' AS what
FROM delivery
LEFT JOIN (SELECT delivery_id, sum(shipping_minor) AS sum_minor FROM lot GROUP BY delivery_id) AS shared
    ON shared.delivery_id = delivery.id
WHERE delivery.shipping_minor <> coalesce(shared.sum_minor, 0)
ORDER BY delivery.id
