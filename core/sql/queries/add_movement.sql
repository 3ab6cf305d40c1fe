-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO movement (lot_id, change_mm, reason, attempt_id, lost_reason, corrects_id, at, staff_id, station)
VALUES (:lot, :change_mm, :reason, :attempt, :lost_reason, :corrects, :at, :staff, :station)
RETURNING id
