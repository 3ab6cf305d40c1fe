-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ': ' || job.currency || ', with money in ' || money.currency AS what
FROM (
    SELECT job_id, currency FROM charge
    UNION
    SELECT job_id, currency FROM payment
) AS money
JOIN job ON job.id = money.job_id
WHERE job.currency <> money.currency
ORDER BY job.id
