-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'lot ' || lot.tag || ': ' || lot.length_mm || ' mm in the book, ' || coalesce(book.sum_mm, 0)
    || ' mm by its movements' AS what
FROM lot
LEFT JOIN (SELECT lot_id, sum(change_mm) AS sum_mm FROM movement GROUP BY lot_id) AS book ON book.lot_id = lot.id
WHERE lot.length_mm <> coalesce(book.sum_mm, 0)
ORDER BY lot.id
