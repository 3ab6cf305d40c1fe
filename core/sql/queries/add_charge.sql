-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO charge (
    job_id, line, kind, article_id, label, count, amount_minor, tax_hundredths_percent, currency, cost_minor, at,
    staff_id)
VALUES (
    :job, :line, :kind, :article, :label, :count, :amount_minor, :tax_hundredths_percent, :currency, :cost_minor,
    :at, :staff)
RETURNING id
