-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'movement ' || movement.id || ' of lot ' || lot.tag || ': '
    || CASE WHEN weighing.id IS NULL THEN 'booked by no weighing'
        WHEN movement.reason <> 'weighed' THEN movement.reason || ', by weighing ' || weighing.id
        WHEN weighing.lot_id <> movement.lot_id THEN 'booked by weighing ' || weighing.id || ' of another lot'
        ELSE movement.change_mm || ' mm, and ' || (weighing.weighed_mm - weighing.book_mm) || ' mm by weighing '
            || weighing.id END AS what
FROM movement
JOIN lot ON lot.id = movement.lot_id
LEFT JOIN weighed_movement ON weighed_movement.movement_id = movement.id
LEFT JOIN weighing ON weighing.id = weighed_movement.weighing_id
WHERE (movement.reason = 'weighed' OR weighed_movement.movement_id IS NOT NULL)
    AND (weighing.id IS NULL
        OR movement.reason <> 'weighed'
        OR weighing.lot_id <> movement.lot_id
        OR movement.change_mm <> weighing.weighed_mm - weighing.book_mm)
ORDER BY movement.id
