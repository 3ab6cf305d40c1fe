-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job_line.id, job_line.number, job_line.state, job_line.customer_id, job_line.customer_name, job_line.phone,
       job_line.frame_name, job_line.mark, job_line.sport, job_line.method, job_line.mains_hundredths,
       job_line.mains_unit, job_line.crosses_hundredths, job_line.crosses_unit, job_line.whole_code,
       job_line.mains_code, job_line.crosses_code, job_line.promised_at, job_line.logged_at, job.must_by,
       frame_model.highest_hundredths, frame_model.highest_unit,
       (SELECT max(telling.at)
        FROM telling
        WHERE telling.job_id = job.id AND telling.at >= standing_stringing.at) AS told_at
FROM job_line
JOIN job ON job.id = job_line.id
JOIN racket ON racket.id = job.racket_id
JOIN frame_model ON frame_model.id = racket.frame_model_id
LEFT JOIN standing_stringing ON standing_stringing.job_id = job.id
WHERE job_line.state IN (:state1, :state2, :state3, :state4, :state5, :state6)
ORDER BY job_line.promised_at NULLS LAST, job_line.number
