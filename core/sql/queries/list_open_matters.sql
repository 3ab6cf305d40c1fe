-- SPDX-License-Identifier: GPL-3.0-or-later
WITH ready AS (
    SELECT job_event.job_id,
           max(CASE WHEN job_event.kind = 'strung' THEN job_event.at END) AS strung_at,
           max(CASE WHEN job_event.kind = 'collected' THEN job_event.at END) AS collected_at
    FROM job_event
    WHERE job_event.kind IN ('strung', 'collected')
    GROUP BY job_event.job_id
), received AS (
    SELECT payment.job_id, CAST(sum(payment.amount_minor) AS BIGINT) AS paid_minor
    FROM payment
    GROUP BY payment.job_id
)
SELECT job_line.id, job_line.number, job_line.state, job_line.customer_id, job_line.customer_name, job_line.phone,
       job_line.frame_name, job_line.mark, job_line.sport, job_line.method, job_line.mains_hundredths,
       job_line.mains_unit, job_line.crosses_hundredths, job_line.crosses_unit, job_line.whole_code,
       job_line.mains_code, job_line.crosses_code, job_line.promised_at, job_line.logged_at,
       ready.strung_at, CASE WHEN job_line.state = 'collected' THEN ready.collected_at END AS collected_at,
       (SELECT max(telling.at) FROM telling WHERE telling.job_id = job_line.id AND telling.at >= ready.strung_at)
           AS told_at,
       CASE WHEN job_line.state = 'withdrawn' THEN 0 ELSE job_line.total_minor END AS total_minor,
       job_line.currency, coalesce(received.paid_minor, 0) AS paid_minor
FROM job_line
LEFT JOIN ready ON ready.job_id = job_line.id
LEFT JOIN received ON received.job_id = job_line.id
WHERE job_line.state = 'strung'
    OR (job_line.state = 'collected' AND job_line.total_minor <> coalesce(received.paid_minor, 0))
    OR (job_line.state = 'withdrawn' AND coalesce(received.paid_minor, 0) <> 0)
ORDER BY ready.strung_at, job_line.number
