-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO staff_hours (staff_id, weekday, from_minute, to_minute)
VALUES (:staff, :weekday, :from_minute, :to_minute)
