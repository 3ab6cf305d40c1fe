-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM staff_hours
WHERE staff_id = :staff
