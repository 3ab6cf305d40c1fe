-- SPDX-License-Identifier: GPL-3.0-or-later
-- What only PostgreSQL needs: wide ids that the database itself counts, and the guards as triggers. A guard's name is
-- the message it raises, with the code RW001; the part for SQLite raises the same names.

ALTER TABLE staff ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE machine ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE frame_model ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE usual_cut ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE customer ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE contact ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE racket ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE string_article ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE price_list ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE price_line ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE lot ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE job ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE job_piece ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE attempt ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE movement ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE job_event ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE note ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE charge ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE payment ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE telling ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;

-- Whose turn it is to write: who writes holds a lock on this table, and says at the end that one more turn is over,
-- which is how the others see that something has changed.
CREATE TABLE ledger_turn (
    id INTEGER PRIMARY KEY CONSTRAINT ledger_turn_is_one CHECK (id = 1),
    turns BIGINT NOT NULL
);
INSERT INTO ledger_turn (id, turns) VALUES (1, 0);

-- Refuses whatever it is called for, by the name it is given.
CREATE FUNCTION guard_refuse() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION '%', TG_ARGV[0] USING ERRCODE = 'RW001';
END $$;

-- Append-only: once a statement, so that one that meets no row is refused as well.

CREATE TRIGGER movement_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON movement
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('movement_append_only');
CREATE TRIGGER job_event_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON job_event
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('job_event_append_only');
CREATE TRIGGER charge_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON charge
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('charge_append_only');
CREATE TRIGGER payment_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON payment
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('payment_append_only');
CREATE TRIGGER telling_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON telling
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('telling_append_only');
CREATE TRIGGER strung_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON strung
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('strung_append_only');

-- What is kept for ever, though some of its columns change.
CREATE TRIGGER lot_kept BEFORE DELETE OR TRUNCATE ON lot
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('lot_kept');
CREATE TRIGGER job_kept BEFORE DELETE OR TRUNCATE ON job
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('job_kept');
CREATE TRIGGER job_piece_kept BEFORE DELETE OR TRUNCATE ON job_piece
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('job_piece_kept');
CREATE TRIGGER attempt_kept BEFORE DELETE OR TRUNCATE ON attempt
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('attempt_kept');
CREATE TRIGGER ledger_turn_kept BEFORE DELETE OR TRUNCATE ON ledger_turn
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('ledger_turn_kept');
CREATE TRIGGER ledger_kept BEFORE DELETE OR TRUNCATE ON ledger
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('ledger_kept');

-- An id never changes, not by asking for the next one either.
CREATE TRIGGER staff_id_fixed BEFORE UPDATE ON staff FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('staff_id_fixed');
CREATE TRIGGER machine_id_fixed BEFORE UPDATE ON machine FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('machine_id_fixed');
CREATE TRIGGER frame_model_id_fixed BEFORE UPDATE ON frame_model FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('frame_model_id_fixed');
CREATE TRIGGER usual_cut_id_fixed BEFORE UPDATE ON usual_cut FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('usual_cut_id_fixed');
CREATE TRIGGER customer_id_fixed BEFORE UPDATE ON customer FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('customer_id_fixed');
CREATE TRIGGER contact_id_fixed BEFORE UPDATE ON contact FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('contact_id_fixed');
CREATE TRIGGER racket_id_fixed BEFORE UPDATE ON racket FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('racket_id_fixed');
CREATE TRIGGER string_article_id_fixed BEFORE UPDATE ON string_article FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('string_article_id_fixed');
CREATE TRIGGER price_list_id_fixed BEFORE UPDATE ON price_list FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('price_list_id_fixed');
CREATE TRIGGER price_line_id_fixed BEFORE UPDATE ON price_line FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('price_line_id_fixed');
CREATE TRIGGER lot_id_fixed BEFORE UPDATE ON lot FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('lot_id_fixed');
CREATE TRIGGER job_piece_id_fixed BEFORE UPDATE ON job_piece FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('job_piece_id_fixed');
CREATE TRIGGER note_id_fixed BEFORE UPDATE ON note FOR EACH ROW WHEN (NEW.id IS DISTINCT FROM OLD.id)
    EXECUTE FUNCTION guard_refuse('note_id_fixed');

CREATE TRIGGER ledger_facts_fixed BEFORE UPDATE ON ledger FOR EACH ROW
    WHEN (NEW.id IS DISTINCT FROM OLD.id OR NEW.created_at IS DISTINCT FROM OLD.created_at)
    EXECUTE FUNCTION guard_refuse('ledger_facts_fixed');

CREATE TRIGGER job_transition_fixed BEFORE INSERT OR UPDATE OR DELETE OR TRUNCATE ON job_transition
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('job_transition_fixed');

-- A lot's length is the sum of its movements, and nobody else's word.
CREATE TRIGGER lot_starts_empty BEFORE INSERT ON lot FOR EACH ROW WHEN (NEW.length_mm <> 0)
    EXECUTE FUNCTION guard_refuse('lot_starts_empty');

CREATE FUNCTION guard_lot_length() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NEW.length_mm <> (SELECT coalesce(sum(change_mm), 0) FROM movement WHERE lot_id = NEW.id) THEN
        RAISE EXCEPTION 'lot_length_is_its_movements' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER lot_length_is_its_movements BEFORE UPDATE ON lot FOR EACH ROW
    WHEN (NEW.length_mm <> OLD.length_mm) EXECUTE FUNCTION guard_lot_length();

CREATE FUNCTION guard_movement() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NEW.reason = 'cut' AND EXISTS (
            SELECT 1 FROM movement WHERE attempt_id = NEW.attempt_id AND reason = 'cut') THEN
        RAISE EXCEPTION 'movement_one_cut_per_attempt' USING ERRCODE = 'RW001';
    ELSIF NEW.reason = 'cut' AND EXISTS (
            SELECT 1 FROM attempt WHERE id = NEW.attempt_id AND lost_at IS NOT NULL) THEN
        RAISE EXCEPTION 'movement_cut_on_open_attempt' USING ERRCODE = 'RW001';
    ELSIF EXISTS (SELECT 1 FROM lot WHERE id = NEW.lot_id AND closed_at IS NOT NULL) THEN
        RAISE EXCEPTION 'movement_lot_open' USING ERRCODE = 'RW001';
    ELSIF NEW.corrects_id IS NOT NULL AND NOT EXISTS (
            SELECT 1 FROM movement WHERE id = NEW.corrects_id AND lot_id = NEW.lot_id) THEN
        RAISE EXCEPTION 'movement_corrects_same_lot' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER movement_allowed BEFORE INSERT ON movement FOR EACH ROW EXECUTE FUNCTION guard_movement();

CREATE FUNCTION keep_lot_length() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    UPDATE lot SET length_mm = (SELECT sum(change_mm) FROM movement WHERE lot_id = NEW.lot_id)
    WHERE id = NEW.lot_id;
    RETURN NULL;
END $$;
CREATE TRIGGER movement_sets_lot_length AFTER INSERT ON movement
    FOR EACH ROW EXECUTE FUNCTION keep_lot_length();

-- Attempts follow one another: 1, 2, 3, the last one open.
CREATE FUNCTION guard_attempt() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NEW.lost_at IS NOT NULL THEN
        RAISE EXCEPTION 'attempt_starts_open' USING ERRCODE = 'RW001';
    ELSIF NEW.number <> 1 + coalesce(
            (SELECT max(number) FROM attempt WHERE job_piece_id = NEW.job_piece_id), 0) THEN
        RAISE EXCEPTION 'attempt_numbers_follow' USING ERRCODE = 'RW001';
    ELSIF EXISTS (SELECT 1 FROM attempt WHERE job_piece_id = NEW.job_piece_id AND lost_at IS NULL) THEN
        RAISE EXCEPTION 'attempt_one_open' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER attempt_allowed BEFORE INSERT ON attempt FOR EACH ROW EXECUTE FUNCTION guard_attempt();

CREATE FUNCTION guard_attempt_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NEW.id <> OLD.id OR NEW.job_piece_id <> OLD.job_piece_id OR NEW.number <> OLD.number
            OR NEW.opened_at <> OLD.opened_at THEN
        RAISE EXCEPTION 'attempt_facts_fixed' USING ERRCODE = 'RW001';
    ELSIF OLD.lost_at IS NOT NULL THEN
        RAISE EXCEPTION 'attempt_lost_once' USING ERRCODE = 'RW001';
    ELSIF NOT EXISTS (SELECT 1 FROM movement WHERE attempt_id = NEW.id AND reason = 'cut')
            AND NOT EXISTS (SELECT 1 FROM job_event WHERE attempt_id = NEW.id AND kind = 'cut') THEN
        RAISE EXCEPTION 'attempt_lost_after_cut' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER attempt_change_allowed BEFORE UPDATE ON attempt
    FOR EACH ROW EXECUTE FUNCTION guard_attempt_change();

-- A job's state follows from its events, its total from its charges.
CREATE TRIGGER job_starts_new BEFORE INSERT ON job FOR EACH ROW
    WHEN (NEW.state <> '' OR NEW.total_minor <> 0) EXECUTE FUNCTION guard_refuse('job_starts_new');

CREATE FUNCTION guard_job_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NEW.id <> OLD.id OR NEW.number <> OLD.number OR NEW.request_key <> OLD.request_key
            OR NEW.logged_at <> OLD.logged_at OR NEW.currency <> OLD.currency THEN
        RAISE EXCEPTION 'job_facts_fixed' USING ERRCODE = 'RW001';
    ELSIF NEW.row_version < OLD.row_version THEN
        RAISE EXCEPTION 'job_version_grows' USING ERRCODE = 'RW001';
    ELSIF NEW.state <> OLD.state AND NOT EXISTS (
            SELECT 1 FROM job_transition
            WHERE from_state = OLD.state AND to_state = NEW.state
                AND kind = (SELECT kind FROM job_event WHERE job_id = NEW.id ORDER BY id DESC LIMIT 1)) THEN
        RAISE EXCEPTION 'job_state_follows_events' USING ERRCODE = 'RW001';
    ELSIF NEW.total_minor <> OLD.total_minor
            AND NEW.total_minor <> (SELECT coalesce(sum(amount_minor), 0) FROM charge WHERE job_id = NEW.id) THEN
        RAISE EXCEPTION 'job_total_is_its_charges' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER job_change_allowed BEFORE UPDATE ON job FOR EACH ROW EXECUTE FUNCTION guard_job_change();

CREATE FUNCTION guard_job_event() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NOT EXISTS (
            SELECT 1 FROM job_transition JOIN job ON job.state = job_transition.from_state
            WHERE job.id = NEW.job_id AND job_transition.kind = NEW.kind) THEN
        RAISE EXCEPTION 'job_event_fits_state' USING ERRCODE = 'RW001';
    ELSIF NEW.attempt_id IS NOT NULL AND NOT EXISTS (
            SELECT 1 FROM attempt JOIN job_piece ON job_piece.id = attempt.job_piece_id
            WHERE attempt.id = NEW.attempt_id AND job_piece.job_id = NEW.job_id) THEN
        RAISE EXCEPTION 'job_event_attempt_of_job' USING ERRCODE = 'RW001';
    ELSIF NEW.attempt_id IS NOT NULL AND EXISTS (
            SELECT 1 FROM job_event WHERE attempt_id = NEW.attempt_id AND kind = NEW.kind) THEN
        RAISE EXCEPTION 'job_event_once_per_attempt' USING ERRCODE = 'RW001';
    ELSIF NEW.kind = 'cut' AND EXISTS (
            SELECT 1 FROM attempt WHERE id = NEW.attempt_id AND lost_at IS NOT NULL) THEN
        RAISE EXCEPTION 'job_event_cut_on_open_attempt' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER job_event_allowed BEFORE INSERT ON job_event FOR EACH ROW EXECUTE FUNCTION guard_job_event();

CREATE FUNCTION keep_job_state() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    UPDATE job
    SET state = (SELECT to_state FROM job_transition WHERE from_state = job.state AND kind = NEW.kind),
        row_version = row_version + 1
    WHERE id = NEW.job_id;
    RETURN NULL;
END $$;
CREATE TRIGGER job_event_sets_state AFTER INSERT ON job_event FOR EACH ROW EXECUTE FUNCTION keep_job_state();

-- What was strung, and to whom a racket went, hangs on the event that says so.
CREATE FUNCTION guard_event_of_job() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NOT EXISTS (
            SELECT 1 FROM job_event
            WHERE id = NEW.job_event_id AND job_id = NEW.job_id AND kind = TG_ARGV[1]) THEN
        RAISE EXCEPTION '%', TG_ARGV[0] USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER strung_belongs_to_its_event BEFORE INSERT ON strung
    FOR EACH ROW EXECUTE FUNCTION guard_event_of_job('strung_belongs_to_its_event', 'strung');
CREATE TRIGGER handover_belongs_to_its_event BEFORE INSERT ON handover
    FOR EACH ROW EXECUTE FUNCTION guard_event_of_job('handover_belongs_to_its_event', 'collected');

CREATE FUNCTION guard_charge() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF EXISTS (SELECT 1 FROM job WHERE id = NEW.job_id AND currency <> NEW.currency) THEN
        RAISE EXCEPTION 'charge_in_the_jobs_currency' USING ERRCODE = 'RW001';
    ELSIF NEW.corrects_id IS NOT NULL AND NOT EXISTS (
            SELECT 1 FROM charge WHERE id = NEW.corrects_id AND job_id = NEW.job_id) THEN
        RAISE EXCEPTION 'charge_corrects_same_job' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER charge_allowed BEFORE INSERT ON charge FOR EACH ROW EXECUTE FUNCTION guard_charge();

CREATE FUNCTION keep_job_total() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    UPDATE job SET total_minor = (SELECT sum(amount_minor) FROM charge WHERE job_id = NEW.job_id)
    WHERE id = NEW.job_id;
    RETURN NULL;
END $$;
CREATE TRIGGER charge_sets_job_total AFTER INSERT ON charge FOR EACH ROW EXECUTE FUNCTION keep_job_total();

CREATE FUNCTION guard_payment() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF EXISTS (SELECT 1 FROM job WHERE id = NEW.job_id AND currency <> NEW.currency) THEN
        RAISE EXCEPTION 'payment_in_the_jobs_currency' USING ERRCODE = 'RW001';
    ELSIF NEW.corrects_id IS NOT NULL AND NOT EXISTS (
            SELECT 1 FROM payment WHERE id = NEW.corrects_id AND job_id = NEW.job_id) THEN
        RAISE EXCEPTION 'payment_corrects_same_job' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER payment_allowed BEFORE INSERT ON payment FOR EACH ROW EXECUTE FUNCTION guard_payment();

-- Somebody whose racket is still here cannot be removed.
CREATE FUNCTION guard_customer_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NEW.row_version < OLD.row_version THEN
        RAISE EXCEPTION 'customer_version_grows' USING ERRCODE = 'RW001';
    ELSIF NEW.removed_at IS NOT NULL AND OLD.removed_at IS NULL AND EXISTS (
            SELECT 1 FROM job WHERE customer_id = NEW.id AND state NOT IN ('collected', 'withdrawn')) THEN
        RAISE EXCEPTION 'customer_racket_still_here' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER customer_change_allowed BEFORE UPDATE ON customer
    FOR EACH ROW EXECUTE FUNCTION guard_customer_change();
