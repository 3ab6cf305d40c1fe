-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO spool_weight (lot_id, what, weight_mg, step_mg, at, staff_id, station)
VALUES (:lot, :what, :weight_mg, :step_mg, :at, :staff, :station)
RETURNING id
