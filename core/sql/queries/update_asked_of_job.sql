-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE job
SET mains_hundredths = :mains_hundredths, mains_unit = :mains_unit, crosses_hundredths = :crosses_hundredths,
    crosses_unit = :crosses_unit, row_version = row_version + 1
WHERE id = :job
