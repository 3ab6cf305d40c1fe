-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM charge_words
WHERE charge_id IN (
    SELECT charge.id FROM charge JOIN job ON job.id = charge.job_id WHERE job.customer_id = :customer)
