-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.number AS job,
       job.customer_id AS customer,
       job.racket_id AS racket,
       job.state,
       job.method,
       job.route,
       job.mains_hundredths AS asked_mains_hundredths,
       job.mains_unit AS asked_mains_unit,
       job.crosses_hundredths AS asked_crosses_hundredths,
       job.crosses_unit AS asked_crosses_unit,
       done.mains_hundredths AS strung_mains_hundredths,
       done.mains_unit AS strung_mains_unit,
       done.crosses_hundredths AS strung_crosses_hundredths,
       done.crosses_unit AS strung_crosses_unit,
       job.logged_at AS logged,
       job.promised_at AS promised,
       job.total_minor AS total
FROM job
LEFT JOIN strung AS done ON done.job_event_id = (
    SELECT max(strung.job_event_id) FROM strung WHERE strung.job_id = job.id)
ORDER BY job.number
