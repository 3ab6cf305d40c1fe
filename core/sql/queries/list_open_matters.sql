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
SELECT job.id, job.number, job.state, job.customer_id, customer.name AS customer_name,
       coalesce((SELECT contact.text
                 FROM contact
                 WHERE contact.customer_id = job.customer_id AND contact.kind = 'phone'
                 ORDER BY contact.id
                 LIMIT 1), '') AS phone,
       frame_model.name AS frame_name, racket.mark,
       frame_model.sport, job.method, job.mains_hundredths, job.mains_unit, job.crosses_hundredths, job.crosses_unit,
       whole_article.code AS whole_code, mains_article.code AS mains_code, crosses_article.code AS crosses_code,
       job.promised_at, job.logged_at,
       ready.strung_at, CASE WHEN job.state = 'collected' THEN ready.collected_at END AS collected_at,
       (SELECT max(telling.at) FROM telling WHERE telling.job_id = job.id AND telling.at >= ready.strung_at) AS told_at,
       job.total_minor, job.currency, coalesce(received.paid_minor, 0) AS paid_minor
FROM job
JOIN customer ON customer.id = job.customer_id
JOIN racket ON racket.id = job.racket_id
JOIN frame_model ON frame_model.id = racket.frame_model_id
LEFT JOIN job_piece AS whole ON whole.job_id = job.id AND whole.role = 'whole'
LEFT JOIN string_article AS whole_article ON whole_article.id = whole.article_id
LEFT JOIN job_piece AS mains ON mains.job_id = job.id AND mains.role = 'mains'
LEFT JOIN string_article AS mains_article ON mains_article.id = mains.article_id
LEFT JOIN job_piece AS crosses ON crosses.job_id = job.id AND crosses.role = 'crosses'
LEFT JOIN string_article AS crosses_article ON crosses_article.id = crosses.article_id
LEFT JOIN ready ON ready.job_id = job.id
LEFT JOIN received ON received.job_id = job.id
WHERE job.state = 'strung'
    OR (job.state = 'collected' AND job.total_minor <> coalesce(received.paid_minor, 0))
    OR (job.state = 'withdrawn' AND coalesce(received.paid_minor, 0) <> 0)
ORDER BY ready.strung_at, job.number
