-- SPDX-License-Identifier: GPL-3.0-or-later
-- What was cut off the ends of a piece when it was tied off, all of it together: measured (both lengths alike), or told
-- in words, which say from where to where it lies. Of a one-piece job the short side's own is kept beside the whole's.
-- Told again, the later row counts.

CREATE TABLE tails (
    id INTEGER PRIMARY KEY,
    attempt_id BIGINT NOT NULL REFERENCES attempt (id),
    part TEXT NOT NULL CONSTRAINT tails_part CHECK (part IN ('piece', 'short-side')),
    low_mm BIGINT NOT NULL CONSTRAINT tails_low CHECK (low_mm >= 0),
    high_mm BIGINT NOT NULL,
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT tails_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books')),
    CONSTRAINT tails_in_order CHECK (low_mm <= high_mm)
);
CREATE INDEX tails_by_attempt ON tails (attempt_id);
