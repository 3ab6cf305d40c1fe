-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO payment (job_id, amount_minor, currency, way, at, staff_id, station, corrects_id)
VALUES (:job, :amount_minor, :currency, :way, :at, :staff, :station, :corrects)
RETURNING id
