-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, at, staff_id, station, ended_at, ended_by_staff_id
FROM stock_take
WHERE ended_at IS NULL
ORDER BY id
LIMIT 1
