-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT payment.id AS payment,
       job.number AS job,
       payment.amount_minor AS amount,
       payment.way,
       payment.corrects_id AS corrects,
       payment.at,
       staff.name AS person,
       payment.station
FROM payment
JOIN job ON job.id = payment.job_id
JOIN staff ON staff.id = payment.staff_id
ORDER BY payment.id
