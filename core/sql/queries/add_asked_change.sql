-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO asked_change (job_id, old_mains_hundredths, old_mains_unit, old_crosses_hundredths, old_crosses_unit,
    mains_hundredths, mains_unit, crosses_hundredths, crosses_unit, at, staff_id, station, seen_at, seen_by_staff_id)
VALUES (:job, :old_mains_hundredths, :old_mains_unit, :old_crosses_hundredths, :old_crosses_unit,
    :mains_hundredths, :mains_unit, :crosses_hundredths, :crosses_unit, :at, :staff, :station, :seen_at, :seen_by)
