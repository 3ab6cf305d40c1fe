-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT ledger.id, ledger.currency,
       CAST(coalesce((SELECT sum(job.total_minor
                                 - coalesce((SELECT sum(payment.amount_minor) FROM payment
                                             WHERE payment.job_id = job.id), 0))
                      FROM job
                      WHERE job.customer_id = :customer AND job.state = 'collected'), 0) AS BIGINT) AS owed_minor
FROM ledger
WHERE ledger.id = 1
