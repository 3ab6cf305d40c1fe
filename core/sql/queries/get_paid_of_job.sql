-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.id, job.currency,
       CAST(COALESCE((SELECT SUM(payment.amount_minor) FROM payment WHERE payment.job_id = job.id), 0) AS BIGINT)
           AS paid_minor
FROM job
WHERE job.id = :job
