-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM staff_day_off
WHERE staff_id = :staff
