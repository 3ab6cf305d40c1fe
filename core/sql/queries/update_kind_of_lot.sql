-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE lot
SET kind = :kind
WHERE id = :lot
