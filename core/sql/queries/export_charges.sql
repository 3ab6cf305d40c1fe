-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.number AS job,
       charge.line,
       charge.kind,
       string_article.code AS string,
       charge.label,
       charge.count AS pieces,
       charge.amount_minor AS amount,
       charge.tax_hundredths_percent,
       charge.cost_minor AS cost,
       charge.at
FROM charge
JOIN job ON job.id = charge.job_id
LEFT JOIN string_article ON string_article.id = charge.article_id
ORDER BY job.number, charge.line
