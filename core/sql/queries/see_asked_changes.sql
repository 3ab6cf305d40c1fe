-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE asked_change
SET seen_at = :at, seen_by_staff_id = :staff
WHERE job_id = :job AND seen_at IS NULL
