-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE lot
SET closed_at = :at
WHERE id = :lot AND closed_at IS NULL
