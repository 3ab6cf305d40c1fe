-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT movement.id, movement.lot_id, movement.change_mm, movement.reason, movement.attempt_id, movement.lost_reason,
       movement.corrects_id, movement.at, movement.staff_id, movement.station,
       coalesce(movement_words.words, '') AS words
FROM movement
LEFT JOIN movement_words ON movement_words.movement_id = movement.id
WHERE movement.lot_id = :lot
ORDER BY movement.id
