-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT weighing_book.id AS weighing,
       lot.tag AS lot,
       weighing_book.stock_take_id AS stock_take,
       weighing_book.gross_mg,
       weighing_book.gross_step_mg AS scale_step_mg,
       weighing_book.empty_mg,
       weighing_book.new_mg,
       weighing_book.metre_ug,
       weighing_book.weighed_mm,
       weighing_book.weighed_sd_mm,
       weighing_book.book_mm,
       weighing_book.book_sd_mm,
       weighing_book.booked_id AS movement,
       weighing_book.at,
       staff.name AS person,
       weighing_book.station
FROM weighing_book
JOIN lot ON lot.id = weighing_book.lot_id
JOIN staff ON staff.id = weighing_book.staff_id
ORDER BY weighing_book.id
