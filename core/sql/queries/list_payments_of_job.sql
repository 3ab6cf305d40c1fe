-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, amount_minor, currency, way, at, staff_id, station, corrects_id, request_key
FROM payment
WHERE job_id = :job
ORDER BY id
