-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job_piece.job_id
FROM attempt
JOIN job_piece ON job_piece.id = attempt.job_piece_id
WHERE attempt.id = :attempt
