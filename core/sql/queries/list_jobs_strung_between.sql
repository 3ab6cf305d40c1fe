-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.id, job.number, customer.name AS customer_name, frame_model.name AS frame_name, done.at AS strung_at
FROM standing_stringing AS done
JOIN job ON job.id = done.job_id
JOIN customer ON customer.id = job.customer_id
JOIN racket ON racket.id = job.racket_id
JOIN frame_model ON frame_model.id = racket.frame_model_id
WHERE done.at >= :from
    AND done.at < :to
ORDER BY done.at, job.id
