-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM job_event_words
WHERE job_event_id IN (
    SELECT job_event.id FROM job_event JOIN job ON job.id = job_event.job_id WHERE job.customer_id = :customer)
