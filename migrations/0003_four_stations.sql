-- SPDX-License-Identifier: GPL-3.0-or-later
-- What the four stations keep beyond the first racket: deliveries and packets, working hours, the informed yes, what came
-- with a racket, why something was done, changes of what was asked, and how far the bench is. Facts stay for ever; free
-- words and names stand in tables of their own, so that they can be erased.

CREATE TABLE delivery (
    id INTEGER PRIMARY KEY,
    request_key TEXT NOT NULL CONSTRAINT delivery_request_key_key UNIQUE
        CONSTRAINT delivery_request_key_length CHECK (length(request_key) BETWEEN 1 AND 100),
    supplier TEXT NOT NULL DEFAULT '' CONSTRAINT delivery_supplier CHECK (length(supplier) <= 200),
    shipping_minor BIGINT NOT NULL CONSTRAINT delivery_shipping CHECK (shipping_minor >= 0),
    currency TEXT NOT NULL CONSTRAINT delivery_currency CHECK (length(currency) = 3),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT delivery_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books'))
);

ALTER TABLE lot ADD COLUMN delivery_id BIGINT REFERENCES delivery (id);
CREATE INDEX lot_by_delivery ON lot (delivery_id);

-- What somebody asks to be added once is added once, whatever is pressed twice or lost on the way.
ALTER TABLE customer ADD COLUMN request_key TEXT
    CONSTRAINT customer_request_key_length CHECK (length(request_key) BETWEEN 1 AND 100);
CREATE UNIQUE INDEX customer_by_request_key ON customer (request_key);
ALTER TABLE racket ADD COLUMN request_key TEXT
    CONSTRAINT racket_request_key_length CHECK (length(request_key) BETWEEN 1 AND 100);
CREATE UNIQUE INDEX racket_by_request_key ON racket (request_key);

-- Of two stations that change one row, the second is told.
ALTER TABLE frame_model ADD COLUMN row_version BIGINT NOT NULL DEFAULT 1;
ALTER TABLE string_article ADD COLUMN row_version BIGINT NOT NULL DEFAULT 1;
ALTER TABLE staff ADD COLUMN row_version BIGINT NOT NULL DEFAULT 1;
ALTER TABLE machine ADD COLUMN row_version BIGINT NOT NULL DEFAULT 1;

-- Who strings makes promises possible; who has left and what is retired stays in the history and is offered no more.
ALTER TABLE staff ADD COLUMN strings INTEGER NOT NULL DEFAULT 1 CONSTRAINT staff_strings CHECK (strings IN (0, 1));
ALTER TABLE staff ADD COLUMN retired INTEGER NOT NULL DEFAULT 0 CONSTRAINT staff_retired CHECK (retired IN (0, 1));
ALTER TABLE machine ADD COLUMN retired INTEGER NOT NULL DEFAULT 0 CONSTRAINT machine_retired CHECK (retired IN (0, 1));
ALTER TABLE string_article ADD COLUMN retired INTEGER NOT NULL DEFAULT 0
    CONSTRAINT string_retired CHECK (retired IN (0, 1));

-- A person without any hours here works whenever the shop is open. Monday is 1.
CREATE TABLE staff_hours (
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    weekday INTEGER NOT NULL CONSTRAINT staff_hours_weekday CHECK (weekday BETWEEN 1 AND 7),
    from_minute INTEGER NOT NULL CONSTRAINT staff_hours_from CHECK (from_minute BETWEEN 0 AND 1440),
    to_minute INTEGER NOT NULL CONSTRAINT staff_hours_to CHECK (to_minute BETWEEN 0 AND 1440),
    PRIMARY KEY (staff_id, weekday),
    CONSTRAINT staff_hours_forwards CHECK (from_minute < to_minute)
);
CREATE TABLE staff_day_off (
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    date TEXT NOT NULL CONSTRAINT staff_day_off_date CHECK (length(date) = 10),
    PRIMARY KEY (staff_id, date)
);

ALTER TABLE job ADD COLUMN must_by BIGINT;
ALTER TABLE job ADD COLUMN bench_step TEXT NOT NULL DEFAULT 'look-over'
    CONSTRAINT job_bench_step CHECK (bench_step IN ('look-over', 'mains', 'crosses', 'finish'));
-- How long the customer's own set is, where somebody measured or read it.
ALTER TABLE job_piece ADD COLUMN set_mm BIGINT CONSTRAINT job_piece_set CHECK (set_mm > 0);

-- What came with the racket, and what was seen when it was looked over together.
CREATE TABLE inspection (
    job_id BIGINT PRIMARY KEY NOT NULL REFERENCES job (id),
    came_with TEXT NOT NULL DEFAULT '' CONSTRAINT inspection_came_with CHECK (length(came_with) <= 10000),
    remarks TEXT NOT NULL DEFAULT '' CONSTRAINT inspection_remarks CHECK (length(remarks) <= 10000)
);

-- The informed yes to a pull above the frame's marked maximum, for one job: what was told, and by whom.
CREATE TABLE consent (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    pull_hundredths INTEGER NOT NULL CONSTRAINT consent_pull CHECK (pull_hundredths BETWEEN 180 AND 10000),
    pull_unit TEXT NOT NULL CONSTRAINT consent_pull_unit CHECK (pull_unit IN ('lb', 'kg')),
    marked_hundredths INTEGER NOT NULL CONSTRAINT consent_marked CHECK (marked_hundredths > 0),
    marked_unit TEXT NOT NULL CONSTRAINT consent_marked_unit CHECK (marked_unit IN ('lb', 'kg')),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT consent_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books'))
);
CREATE INDEX consent_by_job ON consent (job_id);
CREATE TABLE consent_words (
    consent_id BIGINT PRIMARY KEY NOT NULL REFERENCES consent (id),
    agreed_by TEXT NOT NULL CONSTRAINT consent_agreed_by CHECK (length(agreed_by) <= 200),
    words TEXT NOT NULL CONSTRAINT consent_words_length CHECK (length(words) <= 10000)
);

-- The reason somebody gave for a step of a job, a correction of a lot, a charge that was changed.
CREATE TABLE job_event_words (
    job_event_id BIGINT PRIMARY KEY NOT NULL REFERENCES job_event (id),
    words TEXT NOT NULL CONSTRAINT job_event_words_length CHECK (length(words) <= 10000)
);
CREATE TABLE movement_words (
    movement_id BIGINT PRIMARY KEY NOT NULL REFERENCES movement (id),
    words TEXT NOT NULL CONSTRAINT movement_words_length CHECK (length(words) <= 10000)
);
CREATE TABLE charge_words (
    charge_id BIGINT PRIMARY KEY NOT NULL REFERENCES charge (id),
    words TEXT NOT NULL CONSTRAINT charge_words_length CHECK (length(words) <= 10000)
);

-- A change of the agreed tensions after the racket was taken in; the bench nods to it.
CREATE TABLE asked_change (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    old_mains_hundredths INTEGER NOT NULL,
    old_mains_unit TEXT NOT NULL,
    old_crosses_hundredths INTEGER NOT NULL,
    old_crosses_unit TEXT NOT NULL,
    mains_hundredths INTEGER NOT NULL,
    mains_unit TEXT NOT NULL,
    crosses_hundredths INTEGER NOT NULL,
    crosses_unit TEXT NOT NULL,
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL
        CONSTRAINT asked_change_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books')),
    seen_at BIGINT,
    seen_by_staff_id BIGINT REFERENCES staff (id),
    CONSTRAINT asked_change_seen CHECK ((seen_at IS NULL) = (seen_by_staff_id IS NULL))
);
CREATE INDEX asked_change_by_job ON asked_change (job_id);

CREATE INDEX payment_by_time ON payment (at);

-- A cut that was confirmed and never made, and the movement that takes it back, say nothing of the lot.
CREATE INDEX movement_by_corrected ON movement (corrects_id);
DROP VIEW lot_book;
CREATE VIEW standing_movement AS
SELECT movement.id, movement.lot_id, movement.reason
FROM movement
WHERE movement.corrects_id IS NULL
    AND NOT EXISTS (SELECT 1 FROM movement AS correction WHERE correction.corrects_id = movement.id);
CREATE VIEW lot_book AS
SELECT lot.id, lot.tag, lot.article_id, lot.kind, lot.owner_customer_id, lot.nominal_mm, lot.length_mm,
    lot.price_minor, lot.shipping_minor, lot.currency, lot.batch, lot.received_at, lot.closed_at, lot.delivery_id,
    CASE WHEN EXISTS (
            SELECT 1 FROM standing_movement
            WHERE standing_movement.lot_id = lot.id AND standing_movement.reason IN ('cut', 'lost'))
        THEN 0 ELSE 1 END AS sealed,
    CASE WHEN (SELECT standing_movement.reason
            FROM standing_movement
            WHERE standing_movement.lot_id = lot.id
                AND standing_movement.reason IN ('received', 'measured', 'cut', 'lost')
            ORDER BY standing_movement.id DESC
            LIMIT 1) = 'measured'
        THEN 1 ELSE 0 END AS measured_since_last_cut
FROM lot;

-- A job as a list shows it.
CREATE VIEW job_line AS
SELECT job.id, job.number, job.state, job.customer_id, customer.name AS customer_name,
    coalesce((SELECT contact.text
        FROM contact
        WHERE contact.customer_id = job.customer_id AND contact.kind = 'phone'
        ORDER BY contact.id
        LIMIT 1), '') AS phone,
    frame_model.name AS frame_name, racket.mark, frame_model.sport, job.method, job.mains_hundredths, job.mains_unit,
    job.crosses_hundredths, job.crosses_unit, whole_article.code AS whole_code, mains_article.code AS mains_code,
    crosses_article.code AS crosses_code, job.promised_at, job.logged_at, job.total_minor, job.currency
FROM job
JOIN customer ON customer.id = job.customer_id
JOIN racket ON racket.id = job.racket_id
JOIN frame_model ON frame_model.id = racket.frame_model_id
LEFT JOIN job_piece AS whole ON whole.job_id = job.id AND whole.role = 'whole'
LEFT JOIN string_article AS whole_article ON whole_article.id = whole.article_id
LEFT JOIN job_piece AS mains ON mains.job_id = job.id AND mains.role = 'mains'
LEFT JOIN string_article AS mains_article ON mains_article.id = mains.article_id
LEFT JOIN job_piece AS crosses ON crosses.job_id = job.id AND crosses.role = 'crosses'
LEFT JOIN string_article AS crosses_article ON crosses_article.id = crosses.article_id;

-- The stringing that stands: the last of a job, unless the job was opened again.
CREATE VIEW standing_stringing AS
SELECT done.job_id, done.at
FROM job_event AS done
WHERE done.kind = 'strung'
    AND NOT EXISTS (
        SELECT 1 FROM job_event AS later
        WHERE later.job_id = done.job_id AND later.kind IN ('strung', 'reopened') AND later.id > done.id);
