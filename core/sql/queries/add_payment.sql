-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO payment (job_id, amount_minor, currency, way, at, staff_id, station)
VALUES (:job, :amount_minor, :currency, :way, :at, :staff, :station)
RETURNING id
