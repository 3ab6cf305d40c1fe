-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO machine (name, unit, step_hundredths, reach_mm, retired)
VALUES (:name, :unit, :step_hundredths, :reach_mm, :retired)
RETURNING id
