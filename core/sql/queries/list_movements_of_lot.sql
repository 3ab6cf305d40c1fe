-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, lot_id, change_mm, reason, attempt_id, lost_reason, corrects_id, at, staff_id, station
FROM movement
WHERE lot_id = :lot
ORDER BY id
