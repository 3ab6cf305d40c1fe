-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, name, unit, step_hundredths, reach_mm, retired, row_version
FROM machine
ORDER BY name, id
