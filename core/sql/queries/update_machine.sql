-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE machine
SET name = :name, unit = :unit, step_hundredths = :step_hundredths, reach_mm = :reach_mm, retired = :retired,
    row_version = row_version + 1
WHERE id = :machine AND row_version = :version
