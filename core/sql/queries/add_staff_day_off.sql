-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO staff_day_off (staff_id, date)
VALUES (:staff, :date)
