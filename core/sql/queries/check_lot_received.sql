-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'lot ' || lot.tag || ': came ' || coalesce(came.times, 0) || ' times' AS what
FROM lot
LEFT JOIN (SELECT lot_id, count(*) AS times FROM movement WHERE reason = 'received' GROUP BY lot_id) AS came
    ON came.lot_id = lot.id
WHERE coalesce(came.times, 0) <> 1
ORDER BY lot.id
