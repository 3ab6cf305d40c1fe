-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM note
WHERE job_id IN (SELECT id FROM job WHERE customer_id = :customer)
