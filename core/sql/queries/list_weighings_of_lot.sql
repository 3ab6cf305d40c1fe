-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, lot_id, stock_take_id, gross_mg, gross_step_mg, empty_mg, empty_step_mg, new_mg, new_step_mg, metre_ug,
       metre_sd_ug, basis, weighed_mm, weighed_sd_mm, book_mm, book_sd_mm, when_new_mm, when_new_sd_mm, at, staff_id,
       station, booked_id
FROM weighing_book
WHERE lot_id = :lot
ORDER BY id
