-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE job_piece
SET lot_id = :lot, planned_mm = :planned_mm, pinned = :pinned
WHERE id = :piece
