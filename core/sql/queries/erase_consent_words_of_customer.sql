-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM consent_words
WHERE consent_id IN (
    SELECT consent.id FROM consent JOIN job ON job.id = consent.job_id WHERE job.customer_id = :customer)
