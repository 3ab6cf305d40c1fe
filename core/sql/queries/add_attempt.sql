-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO attempt (job_piece_id, number, opened_at)
VALUES (:piece, :number, :opened_at)
RETURNING id
