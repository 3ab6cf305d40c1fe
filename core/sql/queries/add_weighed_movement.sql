-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO weighed_movement (movement_id, weighing_id)
VALUES (:movement, :weighing)
