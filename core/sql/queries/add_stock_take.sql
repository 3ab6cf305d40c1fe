-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO stock_take (at, staff_id, station)
VALUES (:at, :staff, :station)
RETURNING id
