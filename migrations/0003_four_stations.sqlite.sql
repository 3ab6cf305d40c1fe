-- SPDX-License-Identifier: GPL-3.0-or-later
-- A racket that was handed over by mistake is brought back, and one can be handed over again afterwards. SQLite makes a
-- table anew to change what its columns may hold; rows of other tables that point at it wait until the end.

PRAGMA defer_foreign_keys = ON;

CREATE TABLE job_event_before AS SELECT * FROM job_event;
DROP TABLE job_event;
CREATE TABLE job_event (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    kind TEXT NOT NULL CONSTRAINT job_event_kind CHECK (kind IN ('logged', 'taken', 'put-down', 'cut', 'lost', 'strung',
        'reopened', 'collected', 'brought-back', 'waiting', 'resumed', 'withdrawn')),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL CONSTRAINT job_event_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books')),
    machine_id BIGINT REFERENCES machine (id),
    attempt_id BIGINT REFERENCES attempt (id),
    CONSTRAINT job_event_names_attempt CHECK ((kind IN ('cut', 'lost')) = (attempt_id IS NOT NULL))
);
INSERT INTO job_event (id, job_id, kind, at, staff_id, station, machine_id, attempt_id)
SELECT id, job_id, kind, at, staff_id, station, machine_id, attempt_id FROM job_event_before;
DROP TABLE job_event_before;
CREATE INDEX job_event_by_job ON job_event (job_id);
CREATE INDEX job_event_by_attempt ON job_event (attempt_id);
CREATE INDEX job_event_by_time ON job_event (at);

CREATE TRIGGER job_event_append_only_update BEFORE UPDATE ON job_event
BEGIN SELECT RAISE(ABORT, 'job_event_append_only'); END;
CREATE TRIGGER job_event_append_only_delete BEFORE DELETE ON job_event
BEGIN SELECT RAISE(ABORT, 'job_event_append_only'); END;
CREATE TRIGGER job_event_append_only_replace BEFORE INSERT ON job_event
WHEN EXISTS (SELECT 1 FROM job_event WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'job_event_append_only'); END;
CREATE TRIGGER job_event_allowed BEFORE INSERT ON job_event
BEGIN
    SELECT CASE
        WHEN NOT EXISTS (
                SELECT 1 FROM job_transition JOIN job ON job.state = job_transition.from_state
                WHERE job.id = NEW.job_id AND job_transition.kind = NEW.kind)
            THEN RAISE(ABORT, 'job_event_fits_state')
        WHEN NEW.attempt_id IS NOT NULL AND NOT EXISTS (
                SELECT 1 FROM attempt JOIN job_piece ON job_piece.id = attempt.job_piece_id
                WHERE attempt.id = NEW.attempt_id AND job_piece.job_id = NEW.job_id)
            THEN RAISE(ABORT, 'job_event_attempt_of_job')
        WHEN NEW.attempt_id IS NOT NULL AND EXISTS (
                SELECT 1 FROM job_event WHERE attempt_id = NEW.attempt_id AND kind = NEW.kind)
            THEN RAISE(ABORT, 'job_event_once_per_attempt')
        WHEN NEW.kind = 'cut' AND EXISTS (
                SELECT 1 FROM attempt WHERE id = NEW.attempt_id AND lost_at IS NOT NULL)
            THEN RAISE(ABORT, 'job_event_cut_on_open_attempt')
    END;
END;
CREATE TRIGGER job_event_sets_state AFTER INSERT ON job_event
BEGIN
    UPDATE job
    SET state = (SELECT to_state FROM job_transition WHERE from_state = job.state AND kind = NEW.kind),
        row_version = row_version + 1
    WHERE id = NEW.job_id;
END;

CREATE TABLE handover_before AS SELECT * FROM handover;
DROP TABLE handover;
CREATE TABLE handover (
    job_event_id BIGINT PRIMARY KEY NOT NULL REFERENCES job_event (id),
    job_id BIGINT NOT NULL REFERENCES job (id),
    taken_by TEXT NOT NULL DEFAULT '' CONSTRAINT handover_taken_by CHECK (length(taken_by) <= 200),
    on_account INTEGER NOT NULL DEFAULT 0 CONSTRAINT handover_on_account CHECK (on_account IN (0, 1))
);
INSERT INTO handover (job_event_id, job_id, taken_by) SELECT job_event_id, job_id, taken_by FROM handover_before;
DROP TABLE handover_before;
CREATE INDEX handover_by_job ON handover (job_id);
CREATE TRIGGER handover_belongs_to_its_event BEFORE INSERT ON handover
WHEN NOT EXISTS (
    SELECT 1 FROM job_event WHERE id = NEW.job_event_id AND job_id = NEW.job_id AND kind = 'collected')
BEGIN SELECT RAISE(ABORT, 'handover_belongs_to_its_event'); END;

DROP TRIGGER job_transition_fixed_insert;
INSERT INTO job_transition (from_state, kind, to_state) VALUES
    ('collected', 'brought-back', 'strung'),
    ('withdrawn', 'resumed', 'logged');
CREATE TRIGGER job_transition_fixed_insert BEFORE INSERT ON job_transition
BEGIN SELECT RAISE(ABORT, 'job_transition_fixed'); END;

CREATE TRIGGER delivery_append_only_update BEFORE UPDATE ON delivery
BEGIN SELECT RAISE(ABORT, 'delivery_append_only'); END;
CREATE TRIGGER delivery_append_only_delete BEFORE DELETE ON delivery
BEGIN SELECT RAISE(ABORT, 'delivery_append_only'); END;
CREATE TRIGGER delivery_append_only_replace BEFORE INSERT ON delivery
WHEN EXISTS (SELECT 1 FROM delivery WHERE id = NEW.id OR request_key = NEW.request_key)
BEGIN SELECT RAISE(ABORT, 'delivery_append_only'); END;
CREATE TRIGGER consent_append_only_update BEFORE UPDATE ON consent
BEGIN SELECT RAISE(ABORT, 'consent_append_only'); END;
CREATE TRIGGER consent_append_only_delete BEFORE DELETE ON consent
BEGIN SELECT RAISE(ABORT, 'consent_append_only'); END;
CREATE TRIGGER consent_append_only_replace BEFORE INSERT ON consent
WHEN EXISTS (SELECT 1 FROM consent WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'consent_append_only'); END;

CREATE TRIGGER asked_change_kept_delete BEFORE DELETE ON asked_change
BEGIN SELECT RAISE(ABORT, 'asked_change_kept'); END;
CREATE TRIGGER asked_change_kept_replace BEFORE INSERT ON asked_change
WHEN EXISTS (SELECT 1 FROM asked_change WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'asked_change_kept'); END;
CREATE TRIGGER asked_change_seen_once BEFORE UPDATE ON asked_change
WHEN OLD.seen_at IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'asked_change_seen_once'); END;
