-- SPDX-License-Identifier: GPL-3.0-or-later
-- What only PostgreSQL needs: wide ids, which come before what reads them, and the guards as triggers.

ALTER TABLE spool_weight ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE stock_take ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE weighing ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;

CREATE TRIGGER spool_weight_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON spool_weight
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('spool_weight_append_only');
CREATE TRIGGER weighing_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON weighing
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('weighing_append_only');
CREATE TRIGGER weighed_movement_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON weighed_movement
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('weighed_movement_append_only');

CREATE TRIGGER stock_take_kept BEFORE DELETE OR TRUNCATE ON stock_take
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('stock_take_kept');
-- It ends once, and nothing else of it changes.
CREATE TRIGGER stock_take_ends_once BEFORE UPDATE ON stock_take FOR EACH ROW
    WHEN (OLD.ended_at IS NOT NULL OR NEW.id IS DISTINCT FROM OLD.id OR NEW.at IS DISTINCT FROM OLD.at
        OR NEW.staff_id IS DISTINCT FROM OLD.staff_id OR NEW.station IS DISTINCT FROM OLD.station)
    EXECUTE FUNCTION guard_refuse('stock_take_ends_once');

CREATE FUNCTION guard_stock_take() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF EXISTS (SELECT 1 FROM stock_take WHERE ended_at IS NULL) THEN
        RAISE EXCEPTION 'stock_take_one_at_a_time' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER stock_take_one_at_a_time BEFORE INSERT ON stock_take
    FOR EACH ROW EXECUTE FUNCTION guard_stock_take();

CREATE FUNCTION guard_weighed_movement() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NOT EXISTS (
            SELECT 1 FROM movement JOIN weighing ON weighing.lot_id = movement.lot_id
            WHERE movement.id = NEW.movement_id AND movement.reason = 'weighed' AND weighing.id = NEW.weighing_id) THEN
        RAISE EXCEPTION 'weighed_movement_of_its_lot' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER weighed_movement_of_its_lot BEFORE INSERT ON weighed_movement
    FOR EACH ROW EXECUTE FUNCTION guard_weighed_movement();

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
