-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO consent (job_id, pull_hundredths, pull_unit, marked_hundredths, marked_unit, at, staff_id, station)
VALUES (:job, :pull_hundredths, :pull_unit, :marked_hundredths, :marked_unit, :at, :staff, :station)
RETURNING id
