-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a reel weighed when new it weighed when it came, whenever somebody wrote that down.
SELECT reading.lot_id, reading.weight_mg, reading.step_mg, reading.at
FROM (
    SELECT fresh.lot_id, fresh.weight_mg, fresh.step_mg, came.received_at AS at, 0 AS later, fresh.id
    FROM spool_weight AS fresh
    JOIN lot AS came ON came.id = fresh.lot_id
    WHERE fresh.id = (
        SELECT max(newest.id) FROM spool_weight AS newest WHERE newest.lot_id = fresh.lot_id AND newest.what = 'new')
    UNION ALL
    SELECT lot_id, gross_mg, gross_step_mg, at, 1, id FROM weighing
) AS reading
JOIN lot ON lot.id = reading.lot_id
WHERE lot.article_id = :article
ORDER BY reading.lot_id, reading.at, reading.later, reading.id
