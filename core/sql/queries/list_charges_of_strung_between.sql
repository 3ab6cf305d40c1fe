-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT charge.id, charge.job_id, charge.kind, charge.article_id, charge.label, charge.count, charge.amount_minor,
       charge.tax_hundredths_percent, charge.currency
FROM job_event AS done
JOIN charge ON charge.job_id = done.job_id
WHERE done.kind = 'strung'
    AND done.at >= :from
    AND done.at < :to
    AND NOT EXISTS (
        SELECT 1 FROM job_event AS later
        WHERE later.job_id = done.job_id AND later.kind IN ('strung', 'reopened') AND later.id > done.id)
ORDER BY charge.job_id, charge.line, charge.id
