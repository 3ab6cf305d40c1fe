-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'movement ' || movement.id || ' of lot ' || lot.tag || ': corrects '
    || CASE WHEN corrected.id = movement.id THEN 'itself'
        WHEN corrected.id > movement.id THEN 'what came after it'
        WHEN corrected.lot_id <> movement.lot_id THEN 'a movement of another lot'
        WHEN corrected.corrects_id IS NOT NULL THEN 'a correction'
        ELSE 'what had been corrected' END AS what
FROM movement
JOIN movement AS corrected ON corrected.id = movement.corrects_id
JOIN lot ON lot.id = movement.lot_id
WHERE corrected.id >= movement.id
    OR corrected.lot_id <> movement.lot_id
    OR corrected.corrects_id IS NOT NULL
    OR EXISTS (
        SELECT 1 FROM movement AS before WHERE before.corrects_id = movement.corrects_id AND before.id < movement.id)
ORDER BY movement.id
