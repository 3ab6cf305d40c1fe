-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO tails (attempt_id, part, low_mm, high_mm, at, staff_id, station)
VALUES (:attempt, :part, :low_mm, :high_mm, :at, :staff, :station)
