-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, old_mains_hundredths, old_mains_unit, old_crosses_hundredths, old_crosses_unit, mains_hundredths, mains_unit,
       crosses_hundredths, crosses_unit, at, staff_id, station, seen_at
FROM asked_change
WHERE job_id = :job
ORDER BY id
