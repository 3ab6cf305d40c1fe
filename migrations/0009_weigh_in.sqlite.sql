-- SPDX-License-Identifier: GPL-3.0-or-later
-- What only SQLite needs: the guards as triggers.

CREATE TRIGGER spool_weight_append_only_update BEFORE UPDATE ON spool_weight
BEGIN SELECT RAISE(ABORT, 'spool_weight_append_only'); END;
CREATE TRIGGER spool_weight_append_only_delete BEFORE DELETE ON spool_weight
BEGIN SELECT RAISE(ABORT, 'spool_weight_append_only'); END;
CREATE TRIGGER spool_weight_append_only_replace BEFORE INSERT ON spool_weight
WHEN EXISTS (SELECT 1 FROM spool_weight WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'spool_weight_append_only'); END;

CREATE TRIGGER weighing_append_only_update BEFORE UPDATE ON weighing
BEGIN SELECT RAISE(ABORT, 'weighing_append_only'); END;
CREATE TRIGGER weighing_append_only_delete BEFORE DELETE ON weighing
BEGIN SELECT RAISE(ABORT, 'weighing_append_only'); END;
CREATE TRIGGER weighing_append_only_replace BEFORE INSERT ON weighing
WHEN EXISTS (SELECT 1 FROM weighing WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'weighing_append_only'); END;

CREATE TRIGGER weighed_movement_append_only_update BEFORE UPDATE ON weighed_movement
BEGIN SELECT RAISE(ABORT, 'weighed_movement_append_only'); END;
CREATE TRIGGER weighed_movement_append_only_delete BEFORE DELETE ON weighed_movement
BEGIN SELECT RAISE(ABORT, 'weighed_movement_append_only'); END;
CREATE TRIGGER weighed_movement_append_only_replace BEFORE INSERT ON weighed_movement
WHEN EXISTS (SELECT 1 FROM weighed_movement WHERE movement_id = NEW.movement_id)
BEGIN SELECT RAISE(ABORT, 'weighed_movement_append_only'); END;

CREATE TRIGGER stock_take_kept_delete BEFORE DELETE ON stock_take
BEGIN SELECT RAISE(ABORT, 'stock_take_kept'); END;
CREATE TRIGGER stock_take_kept_replace BEFORE INSERT ON stock_take
WHEN EXISTS (SELECT 1 FROM stock_take WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'stock_take_kept'); END;
-- It ends once, and nothing else of it changes.
CREATE TRIGGER stock_take_ends_once BEFORE UPDATE ON stock_take
WHEN OLD.ended_at IS NOT NULL OR NEW.id IS NOT OLD.id OR NEW.at IS NOT OLD.at OR NEW.staff_id IS NOT OLD.staff_id
    OR NEW.station IS NOT OLD.station
BEGIN SELECT RAISE(ABORT, 'stock_take_ends_once'); END;
CREATE TRIGGER stock_take_one_at_a_time BEFORE INSERT ON stock_take
WHEN EXISTS (SELECT 1 FROM stock_take WHERE ended_at IS NULL AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'stock_take_one_at_a_time'); END;

CREATE TRIGGER weighed_movement_of_its_lot BEFORE INSERT ON weighed_movement
WHEN NOT EXISTS (
    SELECT 1 FROM movement JOIN weighing ON weighing.lot_id = movement.lot_id
    WHERE movement.id = NEW.movement_id AND movement.reason = 'weighed' AND weighing.id = NEW.weighing_id)
BEGIN SELECT RAISE(ABORT, 'weighed_movement_of_its_lot'); END;

-- A weighing with the movement that was booked by it and not taken back.
CREATE VIEW weighing_book AS
SELECT weighing.id, weighing.lot_id, weighing.stock_take_id, weighing.gross_mg, weighing.gross_step_mg,
    weighing.empty_mg, weighing.empty_step_mg, weighing.new_mg, weighing.new_step_mg, weighing.metre_ug,
    weighing.metre_sd_ug, weighing.basis, weighing.weighed_mm, weighing.weighed_sd_mm, weighing.book_mm,
    weighing.book_sd_mm, weighing.when_new_mm, weighing.when_new_sd_mm, weighing.at, weighing.staff_id,
    weighing.station,
    (SELECT max(standing_movement.id)
        FROM weighed_movement
        JOIN standing_movement ON standing_movement.id = weighed_movement.movement_id
        WHERE weighed_movement.weighing_id = weighing.id) AS booked_id
FROM weighing;
