-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT strung.job_event_id, strung.mains_hundredths, strung.mains_unit, strung.crosses_hundredths,
       strung.crosses_unit, strung.machine_id, job_event.at, job_event.staff_id, job_event.station
FROM strung
JOIN job_event ON job_event.id = strung.job_event_id
WHERE strung.job_id = :job
  AND NOT EXISTS (
      SELECT 1
      FROM job_event AS later
      WHERE later.job_id = strung.job_id AND later.kind = 'reopened' AND later.id > strung.job_event_id)
ORDER BY strung.job_event_id DESC
LIMIT 1
