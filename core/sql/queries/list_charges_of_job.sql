-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, kind, article_id, label, count, amount_minor, tax_hundredths_percent, currency, cost_minor
FROM charge
WHERE job_id = :job
ORDER BY line, id
