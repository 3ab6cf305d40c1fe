-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT ledger.id, ledger.currency,
       CAST(coalesce((SELECT sum(CASE WHEN job.state = 'withdrawn' THEN 0 ELSE job.total_minor END
                                 - coalesce((SELECT sum(payment.amount_minor) FROM payment
                                             WHERE payment.job_id = job.id), 0))
                      FROM job
                      WHERE job.customer_id = :customer
                          AND job.state IN ('collected', 'withdrawn')), 0) AS BIGINT) AS owed_minor
FROM ledger
WHERE ledger.id = 1
