-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT movement.id AS movement,
       lot.tag AS lot,
       movement.change_mm,
       movement.reason,
       movement.lost_reason,
       job.number AS job,
       movement.corrects_id AS corrects,
       movement.at,
       staff.name AS person,
       movement.station
FROM movement
JOIN lot ON lot.id = movement.lot_id
JOIN staff ON staff.id = movement.staff_id
LEFT JOIN attempt ON attempt.id = movement.attempt_id
LEFT JOIN job_piece ON job_piece.id = attempt.job_piece_id
LEFT JOIN job ON job.id = job_piece.job_id
ORDER BY movement.id
