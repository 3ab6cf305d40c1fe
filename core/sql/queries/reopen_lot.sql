-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE lot
SET closed_at = NULL
WHERE id = :lot
