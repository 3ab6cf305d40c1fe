-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE handover
SET taken_by = ''
WHERE job_id IN (SELECT id FROM job WHERE customer_id = :customer)
