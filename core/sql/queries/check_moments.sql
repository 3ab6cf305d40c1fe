-- SPDX-License-Identifier: GPL-3.0-or-later
-- The years 1990 to 2199: nothing that a clock in a shop shows lies outside, and neither does what people can read.
SELECT book.name || ' ' || book.id || ': at ' || book.at || ' ms' AS what
FROM (
    SELECT 'movement' AS name, id, at FROM movement
    UNION ALL
    SELECT 'event', id, at FROM job_event
    UNION ALL
    SELECT 'charge', id, at FROM charge
    UNION ALL
    SELECT 'payment', id, at FROM payment
    UNION ALL
    SELECT 'delivery', id, at FROM delivery
    UNION ALL
    SELECT 'spool weight', id, at FROM spool_weight
    UNION ALL
    SELECT 'stock-take', id, at FROM stock_take
    UNION ALL
    SELECT 'weighing', id, at FROM weighing
    UNION ALL
    SELECT 'asked for, had none', id, at FROM asked_for_none
    UNION ALL
    SELECT 'tails', id, at FROM tails
) AS book
WHERE book.at < 631152000000 OR book.at >= 7258118400000
ORDER BY book.name, book.id
