-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT charge.id, charge.job_id, charge.kind, charge.article_id, charge.label, charge.count, charge.amount_minor,
       charge.tax_hundredths_percent, charge.currency, charge.cost_minor
FROM standing_stringing AS done
JOIN charge ON charge.job_id = done.job_id
WHERE done.at >= :from
    AND done.at < :to
ORDER BY charge.job_id, charge.line, charge.id
