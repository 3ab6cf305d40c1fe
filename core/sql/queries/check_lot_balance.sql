-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'lot ' || lot.tag || ': ' || balance.left_mm || ' mm after movement ' || balance.id AS what
FROM (
    SELECT id, lot_id, sum(change_mm) OVER (PARTITION BY lot_id ORDER BY id) AS left_mm
    FROM movement
) AS balance
JOIN lot ON lot.id = balance.lot_id
WHERE balance.left_mm < 0
ORDER BY balance.id
