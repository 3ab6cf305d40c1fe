-- SPDX-License-Identifier: GPL-3.0-or-later
-- A job that was withdrawn wants nothing any more. The first lot of a string wants nothing either: it says since when
-- the shop has had it.
SELECT wish.article_id, wish.at, wish.half_beds
FROM (
    SELECT job_piece.article_id, job.logged_at AS at, CASE WHEN job_piece.role = 'whole' THEN 2 ELSE 1 END AS half_beds
    FROM job
    JOIN job_piece ON job_piece.job_id = job.id
    WHERE job.logged_at >= :since
        AND job.state <> 'withdrawn'
        AND job_piece.source = 'shop-lot'
    UNION ALL
    SELECT asked_for_none.article_id, asked_for_none.at, 2
    FROM asked_for_none
    WHERE asked_for_none.at >= :since
    UNION ALL
    SELECT lot.article_id, min(lot.received_at), 0
    FROM lot
    WHERE lot.owner_customer_id IS NULL
    GROUP BY lot.article_id
) AS wish
ORDER BY wish.article_id, wish.at, wish.half_beds
