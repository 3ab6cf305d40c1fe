-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', event ' || job_event.id || ': ' || job_event.kind || ', of an attempt of job '
    || owner.number AS what
FROM job_event
JOIN job ON job.id = job_event.job_id
JOIN attempt ON attempt.id = job_event.attempt_id
JOIN job_piece ON job_piece.id = attempt.job_piece_id
JOIN job AS owner ON owner.id = job_piece.job_id
WHERE job_piece.job_id <> job_event.job_id
ORDER BY job_event.id
