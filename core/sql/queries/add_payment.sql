-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO payment (job_id, amount_minor, currency, way, at, staff_id, station, corrects_id, request_key)
VALUES (:job, :amount_minor, :currency, :way, :at, :staff, :station, :corrects, :request_key)
RETURNING id
