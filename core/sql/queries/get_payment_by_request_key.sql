-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, job_id, amount_minor, currency, way, at, staff_id, station, corrects_id, request_key
FROM payment
WHERE request_key = :request_key
