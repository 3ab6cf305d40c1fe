-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT staff_id, date
FROM staff_day_off
ORDER BY staff_id, date
