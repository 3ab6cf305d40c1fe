-- SPDX-License-Identifier: GPL-3.0-or-later
-- The weigh-in: what a spool and a new reel weigh, what stood on the scale, and the movement that was booked by it.
-- Weights are milligrams, the step of a scale with each; a string's weight is micrograms a metre.

-- Weighed or read off a label once; the newest of each kind counts.
CREATE TABLE spool_weight (
    id INTEGER PRIMARY KEY,
    lot_id BIGINT NOT NULL REFERENCES lot (id),
    what TEXT NOT NULL CONSTRAINT spool_weight_what CHECK (what IN ('empty', 'new')),
    weight_mg BIGINT NOT NULL CONSTRAINT spool_weight_weight CHECK (weight_mg >= 0),
    step_mg BIGINT NOT NULL CONSTRAINT spool_weight_step CHECK (step_mg > 0),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL
        CONSTRAINT spool_weight_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books'))
);
CREATE INDEX spool_weight_by_lot ON spool_weight (lot_id);

-- Whoever takes stock goes on with the stock-take that has not ended.
CREATE TABLE stock_take (
    id INTEGER PRIMARY KEY,
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT stock_take_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books')),
    ended_at BIGINT,
    ended_by_staff_id BIGINT REFERENCES staff (id),
    CONSTRAINT stock_take_ended CHECK ((ended_at IS NULL) = (ended_by_staff_id IS NULL))
);

-- What stood on the scale, what it was held against, and what that said of the length then.
CREATE TABLE weighing (
    id INTEGER PRIMARY KEY,
    lot_id BIGINT NOT NULL REFERENCES lot (id),
    stock_take_id BIGINT REFERENCES stock_take (id),
    gross_mg BIGINT NOT NULL,
    gross_step_mg BIGINT NOT NULL,
    empty_mg BIGINT,
    empty_step_mg BIGINT,
    new_mg BIGINT,
    new_step_mg BIGINT,
    metre_ug BIGINT NOT NULL,
    metre_sd_ug BIGINT NOT NULL,
    basis TEXT NOT NULL CONSTRAINT weighing_basis CHECK (basis IN ('new', 'metre', 'gone')),
    weighed_mm BIGINT NOT NULL,
    weighed_sd_mm BIGINT NOT NULL,
    book_mm BIGINT NOT NULL,
    book_sd_mm BIGINT NOT NULL,
    when_new_mm BIGINT,
    when_new_sd_mm BIGINT,
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT weighing_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books')),
    CONSTRAINT weighing_weights CHECK (gross_mg > 0 AND gross_step_mg > 0 AND metre_ug > 0 AND metre_sd_ug >= 0),
    CONSTRAINT weighing_empty CHECK ((empty_mg IS NULL) = (empty_step_mg IS NULL) AND empty_mg <= gross_mg),
    CONSTRAINT weighing_new CHECK ((new_mg IS NULL) = (new_step_mg IS NULL)),
    CONSTRAINT weighing_lengths CHECK (weighed_mm >= 0 AND weighed_sd_mm >= 0 AND book_mm >= 0 AND book_sd_mm >= 0),
    CONSTRAINT weighing_when_new CHECK ((when_new_mm IS NULL) = (when_new_sd_mm IS NULL)),
    CONSTRAINT weighing_has_its_basis CHECK (
        (basis = 'gone' OR empty_mg IS NOT NULL) AND (basis = 'metre' OR new_mg IS NOT NULL))
);
CREATE INDEX weighing_by_lot ON weighing (lot_id);
CREATE INDEX weighing_by_stock_take ON weighing (stock_take_id);

-- Which weighing a movement "weighed" was booked by.
CREATE TABLE weighed_movement (
    movement_id BIGINT PRIMARY KEY NOT NULL REFERENCES movement (id),
    weighing_id BIGINT NOT NULL REFERENCES weighing (id)
);
CREATE INDEX weighed_movement_by_weighing ON weighed_movement (weighing_id);
