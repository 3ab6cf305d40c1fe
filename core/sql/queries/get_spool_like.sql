-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT spool_weight.id, spool_weight.lot_id, spool_weight.weight_mg, spool_weight.step_mg
FROM spool_weight
JOIN lot AS other ON other.id = spool_weight.lot_id
JOIN lot ON lot.article_id = other.article_id AND lot.nominal_mm = other.nominal_mm AND lot.id <> other.id
WHERE lot.id = :lot AND spool_weight.what = 'empty' AND other.kind = 'reel'
ORDER BY spool_weight.id DESC
LIMIT 1
