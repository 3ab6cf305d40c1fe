-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT staff_id, weekday, from_minute, to_minute
FROM staff_hours
ORDER BY staff_id, weekday
