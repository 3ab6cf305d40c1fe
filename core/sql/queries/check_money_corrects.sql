-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ', ' || money.kind || ' ' || money.id || ': corrects '
    || CASE WHEN money.corrected_id >= money.id THEN 'what did not come before it'
        ELSE 'what belongs to another job' END AS what
FROM (
    SELECT 'charge' AS kind, charge.id, charge.job_id, corrected.id AS corrected_id, corrected.job_id AS of_job_id
    FROM charge
    JOIN charge AS corrected ON corrected.id = charge.corrects_id
    UNION ALL
    SELECT 'payment', payment.id, payment.job_id, corrected.id, corrected.job_id
    FROM payment
    JOIN payment AS corrected ON corrected.id = payment.corrects_id
) AS money
JOIN job ON job.id = money.job_id
WHERE money.corrected_id >= money.id OR money.of_job_id <> money.job_id
ORDER BY money.kind, money.id
