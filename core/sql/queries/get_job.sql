-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, number, request_key, customer_id, racket_id, method, route, short_side, short_side_mm, mains_hundredths,
       mains_unit, crosses_hundredths, crosses_unit, promised_at, must_by, logged_at, state, bench_step, total_minor,
       currency, row_version,
       CASE WHEN state = 'collected' THEN (
           SELECT MAX(job_event.at)
           FROM job_event
           WHERE job_event.job_id = job.id AND job_event.kind = 'collected') END AS collected_at
FROM job
WHERE id = :job
