-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'movement ' || movement.id || ' of lot ' || lot.tag || ': ' || movement.reason || ', ' || movement.change_mm
    || ' mm' AS what
FROM movement
JOIN lot ON lot.id = movement.lot_id
WHERE NOT (
        (movement.reason = 'received' AND movement.change_mm > 0)
        OR (movement.reason IN ('cut', 'lost', 'returned', 'thrown-away') AND movement.change_mm < 0)
        OR movement.reason IN ('measured', 'weighed'))
    OR (movement.reason = 'cut') <> (movement.attempt_id IS NOT NULL)
    OR (movement.reason = 'lost') <> (movement.lost_reason IS NOT NULL)
ORDER BY movement.id
