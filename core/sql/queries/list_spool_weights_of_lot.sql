-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, what, weight_mg, step_mg
FROM spool_weight
WHERE lot_id = :lot
ORDER BY id
