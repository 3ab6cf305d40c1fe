-- SPDX-License-Identifier: GPL-3.0-or-later
-- Of the last hundred cuts anywhere: a reel that was cut from before those lies on no machine any more.
SELECT recent.lot_id
FROM (
    SELECT movement.id, movement.lot_id, movement.attempt_id, movement.at
    FROM movement
    WHERE movement.reason = 'cut'
    ORDER BY movement.id DESC
    LIMIT 100
) AS recent
JOIN attempt ON attempt.id = recent.attempt_id
JOIN job_piece ON job_piece.id = attempt.job_piece_id
WHERE (
    SELECT job_event.machine_id
    FROM job_event
    WHERE job_event.job_id = job_piece.job_id
        AND job_event.kind IN ('taken', 'reopened')
        AND job_event.at <= recent.at
    ORDER BY job_event.id DESC
    LIMIT 1) = :machine
ORDER BY recent.id DESC
LIMIT 1
