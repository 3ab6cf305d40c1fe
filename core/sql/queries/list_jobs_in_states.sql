-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.id, job.number, job.state, job.customer_id, customer.name AS customer_name,
       coalesce((SELECT contact.text
                 FROM contact
                 WHERE contact.customer_id = job.customer_id AND contact.kind = 'phone'
                 ORDER BY contact.id
                 LIMIT 1), '') AS phone,
       frame_model.name AS frame_name, racket.mark,
       frame_model.sport, job.method, job.mains_hundredths, job.mains_unit, job.crosses_hundredths, job.crosses_unit,
       whole_article.code AS whole_code, mains_article.code AS mains_code, crosses_article.code AS crosses_code,
       job.promised_at, job.logged_at
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
WHERE job.state IN (:state1, :state2, :state3, :state4, :state5, :state6)
ORDER BY job.promised_at NULLS LAST, job.number
