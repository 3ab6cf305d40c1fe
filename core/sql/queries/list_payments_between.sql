-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT payment.id, payment.job_id, job.number, customer.name AS customer_name, payment.amount_minor,
       payment.currency, payment.way, payment.at
FROM payment
JOIN job ON job.id = payment.job_id
JOIN customer ON customer.id = job.customer_id
WHERE payment.at >= :from AND payment.at < :to
ORDER BY payment.at, payment.id
