-- SPDX-License-Identifier: GPL-3.0-or-later
-- The first ledger, as both engines understand it. Lengths are millimetres, money minor units, instants milliseconds
-- since 1970 in UTC, civil dates YYYY-MM-DD, tensions hundredths with the unit that was typed, yes and no 1 and 0.
-- What a column may hold is said here once; what may be done to a row stands in the part of each engine.

CREATE TABLE schema_version (
    version INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    applied_at BIGINT NOT NULL
);

CREATE TABLE ledger (
    id INTEGER PRIMARY KEY CONSTRAINT ledger_is_one CHECK (id = 1),
    application TEXT NOT NULL CONSTRAINT ledger_application CHECK (application = 'reelwright'),
    created_at BIGINT NOT NULL,
    time_zone TEXT NOT NULL CONSTRAINT ledger_time_zone CHECK (length(time_zone) BETWEEN 1 AND 80),
    currency TEXT NOT NULL CONSTRAINT ledger_currency CHECK (length(currency) = 3)
);

CREATE TABLE setting (
    name TEXT PRIMARY KEY NOT NULL CONSTRAINT setting_name CHECK (length(name) BETWEEN 1 AND 80),
    value TEXT NOT NULL CONSTRAINT setting_value CHECK (length(value) <= 10000)
);

CREATE TABLE staff (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CONSTRAINT staff_name CHECK (length(name) BETWEEN 1 AND 80)
);

CREATE TABLE machine (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CONSTRAINT machine_name CHECK (length(name) BETWEEN 1 AND 80),
    unit TEXT NOT NULL CONSTRAINT machine_unit CHECK (unit IN ('lb', 'kg')),
    step_hundredths INTEGER NOT NULL CONSTRAINT machine_step CHECK (step_hundredths BETWEEN 1 AND 1000),
    reach_mm BIGINT NOT NULL CONSTRAINT machine_reach CHECK (reach_mm BETWEEN 0 AND 2000)
);

CREATE TABLE frame_model (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CONSTRAINT frame_name CHECK (length(name) BETWEEN 1 AND 80),
    search_key TEXT NOT NULL,
    sport TEXT NOT NULL CONSTRAINT frame_sport CHECK (sport IN ('tennis', 'squash', 'badminton')),
    hoop_length_mm DOUBLE PRECISION CONSTRAINT frame_hoop_length CHECK (hoop_length_mm BETWEEN 150 AND 450),
    hoop_width_mm DOUBLE PRECISION CONSTRAINT frame_hoop_width CHECK (hoop_width_mm BETWEEN 120 AND 350),
    head_area_cm2 DOUBLE PRECISION CONSTRAINT frame_head_area CHECK (head_area_cm2 BETWEEN 200 AND 1000),
    open_throat INTEGER NOT NULL CONSTRAINT frame_open_throat CHECK (open_throat IN (0, 1)),
    widest_from_throat DOUBLE PRECISION CONSTRAINT frame_widest CHECK (widest_from_throat BETWEEN 0.3 AND 0.7),
    head_exponent DOUBLE PRECISION CONSTRAINT frame_head_exponent CHECK (head_exponent BETWEEN 1.2 AND 4),
    throat_exponent DOUBLE PRECISION CONSTRAINT frame_throat_exponent CHECK (throat_exponent BETWEEN 1.2 AND 4),
    wall_mm DOUBLE PRECISION CONSTRAINT frame_wall CHECK (wall_mm BETWEEN 4 AND 20),
    outermost_main_mm DOUBLE PRECISION CONSTRAINT frame_outermost_main CHECK (outermost_main_mm > 0),
    last_cross_mm DOUBLE PRECISION CONSTRAINT frame_last_cross CHECK (last_cross_mm > 0),
    mains INTEGER NOT NULL CONSTRAINT frame_mains CHECK (mains BETWEEN 6 AND 30),
    crosses INTEGER NOT NULL CONSTRAINT frame_crosses CHECK (crosses BETWEEN 6 AND 34),
    mains_span_mm DOUBLE PRECISION CONSTRAINT frame_mains_span CHECK (mains_span_mm > 0),
    crosses_span_mm DOUBLE PRECISION CONSTRAINT frame_crosses_span CHECK (crosses_span_mm > 0),
    crosses_centre_mm DOUBLE PRECISION,
    spread DOUBLE PRECISION CONSTRAINT frame_spread CHECK (spread BETWEEN 0 AND 2),
    mains_start TEXT CONSTRAINT frame_mains_start CHECK (mains_start IN ('head', 'throat')),
    lowest_hundredths INTEGER,
    lowest_unit TEXT CONSTRAINT frame_lowest_unit CHECK (lowest_unit IN ('lb', 'kg')),
    highest_hundredths INTEGER,
    highest_unit TEXT CONSTRAINT frame_highest_unit CHECK (highest_unit IN ('lb', 'kg')),
    forced_side TEXT CONSTRAINT frame_forced_side CHECK (forced_side IN ('left', 'right')),
    forced_side_reason TEXT NOT NULL DEFAULT '',
    mounting_mark TEXT NOT NULL CONSTRAINT frame_mounting_mark CHECK (length(mounting_mark) > 0),
    crosses_from_throat INTEGER NOT NULL
        CONSTRAINT frame_crosses_from_throat CHECK (crosses_from_throat IN (0, 1)),
    note TEXT NOT NULL DEFAULT '' CONSTRAINT frame_note CHECK (length(note) <= 10000),
    CONSTRAINT frame_lowest_with_unit CHECK ((lowest_hundredths IS NULL) = (lowest_unit IS NULL)),
    CONSTRAINT frame_highest_with_unit CHECK ((highest_hundredths IS NULL) = (highest_unit IS NULL))
);
CREATE INDEX frame_model_by_search_key ON frame_model (search_key);

CREATE TABLE usual_cut (
    id INTEGER PRIMARY KEY,
    frame_model_id BIGINT NOT NULL REFERENCES frame_model (id),
    role TEXT NOT NULL CONSTRAINT usual_cut_role CHECK (role IN ('mains', 'crosses', 'whole')),
    material TEXT CONSTRAINT usual_cut_material
        CHECK (material IN ('natural gut', 'nylon', 'multifilament', 'polyester', 'aramid')),
    route TEXT NOT NULL DEFAULT '',
    cut_mm BIGINT NOT NULL CONSTRAINT usual_cut_length CHECK (cut_mm > 0),
    short_side_mm BIGINT CONSTRAINT usual_cut_short_side CHECK (short_side_mm > 0)
);
CREATE UNIQUE INDEX usual_cut_one_each ON usual_cut (frame_model_id, role, coalesce(material, ''), route);

CREATE TABLE customer (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CONSTRAINT customer_name CHECK (length(name) BETWEEN 1 AND 200),
    search_key TEXT NOT NULL,
    created_at BIGINT NOT NULL,
    removed_at BIGINT,
    row_version BIGINT NOT NULL DEFAULT 1
);
CREATE INDEX customer_by_search_key ON customer (search_key);

CREATE TABLE contact (
    id INTEGER PRIMARY KEY,
    customer_id BIGINT NOT NULL REFERENCES customer (id),
    kind TEXT NOT NULL CONSTRAINT contact_kind CHECK (kind IN ('phone', 'email', 'other')),
    text TEXT NOT NULL CONSTRAINT contact_text CHECK (length(text) BETWEEN 1 AND 200),
    digits TEXT NOT NULL DEFAULT ''
);
CREATE INDEX contact_by_customer ON contact (customer_id);

CREATE TABLE racket (
    id INTEGER PRIMARY KEY,
    customer_id BIGINT NOT NULL REFERENCES customer (id),
    frame_model_id BIGINT NOT NULL REFERENCES frame_model (id),
    mark TEXT NOT NULL CONSTRAINT racket_mark CHECK (length(mark) <= 80),
    CONSTRAINT racket_customer_id_frame_model_id_mark_key UNIQUE (customer_id, frame_model_id, mark)
);
CREATE INDEX racket_by_frame ON racket (frame_model_id);

CREATE TABLE string_article (
    id INTEGER PRIMARY KEY,
    code TEXT NOT NULL CONSTRAINT string_article_code_key UNIQUE
        CONSTRAINT string_code CHECK (length(code) BETWEEN 1 AND 20),
    name TEXT NOT NULL CONSTRAINT string_name CHECK (length(name) BETWEEN 1 AND 80),
    colour TEXT NOT NULL DEFAULT '',
    sport TEXT NOT NULL CONSTRAINT string_sport CHECK (sport IN ('tennis', 'squash', 'badminton')),
    material TEXT NOT NULL CONSTRAINT string_material
        CHECK (material IN ('natural gut', 'nylon', 'multifilament', 'polyester', 'aramid')),
    diameter_um INTEGER NOT NULL CONSTRAINT string_diameter CHECK (diameter_um BETWEEN 400 AND 2000),
    gauge_name TEXT NOT NULL DEFAULT '',
    milligrams_per_metre BIGINT CONSTRAINT string_weight CHECK (milligrams_per_metre > 0),
    stretch_percent DOUBLE PRECISION CONSTRAINT string_stretch CHECK (stretch_percent >= 0)
);

CREATE TABLE price_list (
    id INTEGER PRIMARY KEY,
    valid_from TEXT NOT NULL CONSTRAINT price_list_valid_from_key UNIQUE
        CONSTRAINT price_list_date CHECK (length(valid_from) = 10),
    currency TEXT NOT NULL CONSTRAINT price_list_currency CHECK (length(currency) = 3),
    tax_rule TEXT NOT NULL CONSTRAINT price_list_tax_rule CHECK (tax_rule IN ('included', 'added'))
);

CREATE TABLE price_line (
    id INTEGER PRIMARY KEY,
    price_list_id BIGINT NOT NULL REFERENCES price_list (id),
    line INTEGER NOT NULL,
    kind TEXT NOT NULL CONSTRAINT price_line_kind CHECK (kind IN ('labour', 'own-string-labour', 'full-bed',
        'half-bed', 'packet', 'extra', 'rush', 'discount', 'tax')),
    sport TEXT CONSTRAINT price_line_sport CHECK (sport IN ('tennis', 'squash', 'badminton')),
    method TEXT CONSTRAINT price_line_method CHECK (method IN ('two-piece', 'one-piece')),
    article_id BIGINT REFERENCES string_article (id),
    label TEXT NOT NULL DEFAULT '' CONSTRAINT price_line_label CHECK (length(label) <= 200),
    amount_minor BIGINT NOT NULL,
    tax_hundredths_percent INTEGER NOT NULL
        CONSTRAINT price_line_tax CHECK (tax_hundredths_percent BETWEEN 0 AND 10000),
    CONSTRAINT price_line_price_list_id_line_key UNIQUE (price_list_id, line)
);

CREATE TABLE lot (
    id INTEGER PRIMARY KEY,
    tag TEXT NOT NULL CONSTRAINT lot_tag_key UNIQUE CONSTRAINT lot_tag CHECK (length(tag) BETWEEN 1 AND 20),
    article_id BIGINT NOT NULL REFERENCES string_article (id),
    kind TEXT NOT NULL CONSTRAINT lot_kind CHECK (kind IN ('reel', 'packet', 'remnant')),
    owner_customer_id BIGINT REFERENCES customer (id),
    nominal_mm BIGINT NOT NULL CONSTRAINT lot_nominal CHECK (nominal_mm > 0),
    length_mm BIGINT NOT NULL DEFAULT 0 CONSTRAINT lot_length_not_negative CHECK (length_mm >= 0),
    price_minor BIGINT NOT NULL CONSTRAINT lot_price CHECK (price_minor >= 0),
    shipping_minor BIGINT NOT NULL CONSTRAINT lot_shipping CHECK (shipping_minor >= 0),
    currency TEXT NOT NULL CONSTRAINT lot_currency CHECK (length(currency) = 3),
    batch TEXT NOT NULL DEFAULT '' CONSTRAINT lot_batch CHECK (length(batch) <= 80),
    received_at BIGINT NOT NULL,
    closed_at BIGINT,
    CONSTRAINT lot_closed_is_empty CHECK (closed_at IS NULL OR length_mm = 0)
);
CREATE INDEX lot_by_article ON lot (article_id);

CREATE TABLE job (
    id INTEGER PRIMARY KEY,
    number BIGINT NOT NULL CONSTRAINT job_number_key UNIQUE CONSTRAINT job_number CHECK (number > 0),
    request_key TEXT NOT NULL CONSTRAINT job_request_key_key UNIQUE
        CONSTRAINT job_request_key CHECK (length(request_key) BETWEEN 1 AND 100),
    customer_id BIGINT NOT NULL REFERENCES customer (id),
    racket_id BIGINT NOT NULL REFERENCES racket (id),
    method TEXT NOT NULL CONSTRAINT job_method CHECK (method IN ('two-piece', 'one-piece')),
    route TEXT NOT NULL DEFAULT '',
    short_side TEXT NOT NULL CONSTRAINT job_short_side CHECK (short_side IN ('left', 'right')),
    short_side_mm BIGINT CONSTRAINT job_short_side_length CHECK (short_side_mm > 0),
    mains_hundredths INTEGER NOT NULL CONSTRAINT job_mains CHECK (mains_hundredths BETWEEN 180 AND 10000),
    mains_unit TEXT NOT NULL CONSTRAINT job_mains_unit CHECK (mains_unit IN ('lb', 'kg')),
    crosses_hundredths INTEGER NOT NULL CONSTRAINT job_crosses CHECK (crosses_hundredths BETWEEN 180 AND 10000),
    crosses_unit TEXT NOT NULL CONSTRAINT job_crosses_unit CHECK (crosses_unit IN ('lb', 'kg')),
    promised_at BIGINT,
    logged_at BIGINT NOT NULL,
    state TEXT NOT NULL DEFAULT '' CONSTRAINT job_state CHECK (state IN ('', 'logged', 'on-the-machine', 'strung',
        'collected', 'waiting', 'withdrawn')),
    total_minor BIGINT NOT NULL DEFAULT 0,
    currency TEXT NOT NULL CONSTRAINT job_currency CHECK (length(currency) = 3),
    row_version BIGINT NOT NULL DEFAULT 1
);
CREATE INDEX job_by_customer ON job (customer_id);
CREATE INDEX job_by_racket ON job (racket_id);
CREATE INDEX job_by_state ON job (state, promised_at);

CREATE TABLE job_piece (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    role TEXT NOT NULL CONSTRAINT job_piece_role CHECK (role IN ('mains', 'crosses', 'whole')),
    article_id BIGINT NOT NULL REFERENCES string_article (id),
    source TEXT NOT NULL CONSTRAINT job_piece_source CHECK (source IN ('shop-lot', 'customers-lot', 'customers-set')),
    lot_id BIGINT REFERENCES lot (id),
    pinned INTEGER NOT NULL DEFAULT 0 CONSTRAINT job_piece_pinned CHECK (pinned IN (0, 1)),
    planned_mm BIGINT NOT NULL CONSTRAINT job_piece_planned CHECK (planned_mm > 0),
    expected_mm BIGINT NOT NULL CONSTRAINT job_piece_expected CHECK (expected_mm >= 0),
    CONSTRAINT job_piece_job_id_role_key UNIQUE (job_id, role)
);
CREATE INDEX job_piece_by_lot ON job_piece (lot_id);
CREATE INDEX job_piece_by_article ON job_piece (article_id);

CREATE TABLE attempt (
    id INTEGER PRIMARY KEY,
    job_piece_id BIGINT NOT NULL REFERENCES job_piece (id),
    number INTEGER NOT NULL CONSTRAINT attempt_number CHECK (number >= 1),
    opened_at BIGINT NOT NULL,
    lost_reason TEXT CONSTRAINT attempt_lost_reason CHECK (lost_reason IN ('came-short', 'kinked', 'nicked',
        'snapped', 'mis-woven', 'wrong-string', 'faulty-reel', 'other')),
    lost_at BIGINT,
    CONSTRAINT attempt_job_piece_id_number_key UNIQUE (job_piece_id, number),
    CONSTRAINT attempt_lost_with_reason CHECK ((lost_reason IS NULL) = (lost_at IS NULL))
);

CREATE TABLE movement (
    id INTEGER PRIMARY KEY,
    lot_id BIGINT NOT NULL REFERENCES lot (id),
    change_mm BIGINT NOT NULL,
    reason TEXT NOT NULL CONSTRAINT movement_reason CHECK (reason IN ('received', 'cut', 'lost', 'measured',
        'weighed', 'returned', 'thrown-away')),
    attempt_id BIGINT REFERENCES attempt (id),
    lost_reason TEXT CONSTRAINT movement_lost_reason CHECK (lost_reason IN ('came-short', 'kinked', 'nicked',
        'snapped', 'mis-woven', 'wrong-string', 'faulty-reel', 'other')),
    corrects_id BIGINT REFERENCES movement (id),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT movement_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books')),
    CONSTRAINT movement_cut_belongs_to_attempt CHECK ((reason = 'cut') = (attempt_id IS NOT NULL)),
    CONSTRAINT movement_loss_has_reason CHECK ((reason = 'lost') = (lost_reason IS NOT NULL)),
    CONSTRAINT movement_direction CHECK (
        (reason = 'received' AND change_mm > 0)
        OR (reason IN ('cut', 'lost', 'returned', 'thrown-away') AND change_mm < 0)
        OR reason IN ('measured', 'weighed'))
);
CREATE INDEX movement_by_lot ON movement (lot_id);
CREATE UNIQUE INDEX movement_one_cut_per_attempt ON movement (attempt_id) WHERE reason = 'cut';

-- What may happen to a job in which state; '' is a job that was only just written. The rules of the program
-- (core/jobs/job_state.h) hold the same table.
CREATE TABLE job_transition (
    from_state TEXT NOT NULL,
    kind TEXT NOT NULL,
    to_state TEXT NOT NULL,
    PRIMARY KEY (from_state, kind)
);
INSERT INTO job_transition (from_state, kind, to_state) VALUES
    ('', 'logged', 'logged'),
    ('logged', 'taken', 'on-the-machine'),
    ('on-the-machine', 'put-down', 'logged'),
    ('on-the-machine', 'cut', 'on-the-machine'),
    ('on-the-machine', 'lost', 'on-the-machine'),
    ('on-the-machine', 'strung', 'strung'),
    ('strung', 'reopened', 'on-the-machine'),
    ('strung', 'collected', 'collected'),
    ('logged', 'waiting', 'waiting'),
    ('on-the-machine', 'waiting', 'waiting'),
    ('waiting', 'resumed', 'logged'),
    ('logged', 'withdrawn', 'withdrawn'),
    ('waiting', 'withdrawn', 'withdrawn'),
    ('on-the-machine', 'withdrawn', 'withdrawn');

CREATE TABLE job_event (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    kind TEXT NOT NULL CONSTRAINT job_event_kind CHECK (kind IN ('logged', 'taken', 'put-down', 'cut', 'lost', 'strung',
        'reopened', 'collected', 'waiting', 'resumed', 'withdrawn')),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT job_event_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books')),
    machine_id BIGINT REFERENCES machine (id),
    attempt_id BIGINT REFERENCES attempt (id),
    CONSTRAINT job_event_names_attempt CHECK ((kind IN ('cut', 'lost')) = (attempt_id IS NOT NULL))
);
CREATE INDEX job_event_by_job ON job_event (job_id);
CREATE INDEX job_event_by_attempt ON job_event (attempt_id);

CREATE TABLE strung (
    job_event_id BIGINT PRIMARY KEY NOT NULL REFERENCES job_event (id),
    job_id BIGINT NOT NULL REFERENCES job (id),
    mains_hundredths INTEGER NOT NULL CONSTRAINT strung_mains CHECK (mains_hundredths BETWEEN 180 AND 10000),
    mains_unit TEXT NOT NULL CONSTRAINT strung_mains_unit CHECK (mains_unit IN ('lb', 'kg')),
    crosses_hundredths INTEGER NOT NULL CONSTRAINT strung_crosses CHECK (crosses_hundredths BETWEEN 180 AND 10000),
    crosses_unit TEXT NOT NULL CONSTRAINT strung_crosses_unit CHECK (crosses_unit IN ('lb', 'kg')),
    machine_id BIGINT NOT NULL REFERENCES machine (id)
);
CREATE INDEX strung_by_job ON strung (job_id);

CREATE TABLE note (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    words TEXT NOT NULL CONSTRAINT note_words CHECK (length(words) <= 10000),
    at BIGINT NOT NULL
);
CREATE INDEX note_by_job ON note (job_id);

CREATE TABLE charge (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    line INTEGER NOT NULL,
    kind TEXT NOT NULL CONSTRAINT charge_kind CHECK (kind IN ('labour', 'own-string-labour', 'full-bed', 'half-bed',
        'packet', 'extra', 'rush', 'discount', 'tax')),
    article_id BIGINT REFERENCES string_article (id),
    label TEXT NOT NULL DEFAULT '' CONSTRAINT charge_label CHECK (length(label) <= 200),
    count INTEGER NOT NULL DEFAULT 1 CONSTRAINT charge_count CHECK (count >= 1),
    amount_minor BIGINT NOT NULL,
    tax_hundredths_percent INTEGER NOT NULL
        CONSTRAINT charge_tax CHECK (tax_hundredths_percent BETWEEN 0 AND 10000),
    currency TEXT NOT NULL,
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    corrects_id BIGINT REFERENCES charge (id),
    CONSTRAINT charge_job_id_line_key UNIQUE (job_id, line)
);

CREATE TABLE payment (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    amount_minor BIGINT NOT NULL,
    currency TEXT NOT NULL,
    way TEXT NOT NULL CONSTRAINT payment_way CHECK (length(way) BETWEEN 1 AND 40),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT payment_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books')),
    corrects_id BIGINT REFERENCES payment (id)
);
CREATE INDEX payment_by_job ON payment (job_id);

CREATE TABLE telling (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    how TEXT NOT NULL CONSTRAINT telling_how CHECK (length(how) BETWEEN 1 AND 40),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT telling_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books'))
);
CREATE INDEX telling_by_job ON telling (job_id);

CREATE TABLE handover (
    job_id BIGINT PRIMARY KEY NOT NULL REFERENCES job (id),
    job_event_id BIGINT NOT NULL REFERENCES job_event (id),
    taken_by TEXT NOT NULL DEFAULT '' CONSTRAINT handover_taken_by CHECK (length(taken_by) <= 200)
);
