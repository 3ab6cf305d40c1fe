-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE attempt
SET lost_reason = :reason, lost_at = :at
WHERE id = :attempt AND lost_at IS NULL
RETURNING id, job_piece_id, number
