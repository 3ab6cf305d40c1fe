-- SPDX-License-Identifier: GPL-3.0-or-later
-- What only SQLite needs: the guards as triggers. A guard's name is what it raises; the part for PostgreSQL raises the
-- same names. RAISE(ABORT) undoes the statement and leaves the transaction to whoever began it.

-- Append-only. The triggers on INSERT stand for connections that have not set recursive_triggers: there INSERT OR
-- REPLACE removes the old row without asking the triggers on DELETE.

CREATE TRIGGER movement_append_only_update BEFORE UPDATE ON movement
BEGIN SELECT RAISE(ABORT, 'movement_append_only'); END;
CREATE TRIGGER movement_append_only_delete BEFORE DELETE ON movement
BEGIN SELECT RAISE(ABORT, 'movement_append_only'); END;
CREATE TRIGGER movement_append_only_replace BEFORE INSERT ON movement
WHEN EXISTS (SELECT 1 FROM movement WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'movement_append_only'); END;

CREATE TRIGGER job_event_append_only_update BEFORE UPDATE ON job_event
BEGIN SELECT RAISE(ABORT, 'job_event_append_only'); END;
CREATE TRIGGER job_event_append_only_delete BEFORE DELETE ON job_event
BEGIN SELECT RAISE(ABORT, 'job_event_append_only'); END;
CREATE TRIGGER job_event_append_only_replace BEFORE INSERT ON job_event
WHEN EXISTS (SELECT 1 FROM job_event WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'job_event_append_only'); END;

CREATE TRIGGER charge_append_only_update BEFORE UPDATE ON charge
BEGIN SELECT RAISE(ABORT, 'charge_append_only'); END;
CREATE TRIGGER charge_append_only_delete BEFORE DELETE ON charge
BEGIN SELECT RAISE(ABORT, 'charge_append_only'); END;
CREATE TRIGGER charge_append_only_replace BEFORE INSERT ON charge
WHEN EXISTS (SELECT 1 FROM charge WHERE id = NEW.id OR (job_id = NEW.job_id AND line = NEW.line))
BEGIN SELECT RAISE(ABORT, 'charge_append_only'); END;

CREATE TRIGGER payment_append_only_update BEFORE UPDATE ON payment
BEGIN SELECT RAISE(ABORT, 'payment_append_only'); END;
CREATE TRIGGER payment_append_only_delete BEFORE DELETE ON payment
BEGIN SELECT RAISE(ABORT, 'payment_append_only'); END;
CREATE TRIGGER payment_append_only_replace BEFORE INSERT ON payment
WHEN EXISTS (SELECT 1 FROM payment WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'payment_append_only'); END;

CREATE TRIGGER telling_append_only_update BEFORE UPDATE ON telling
BEGIN SELECT RAISE(ABORT, 'telling_append_only'); END;
CREATE TRIGGER telling_append_only_delete BEFORE DELETE ON telling
BEGIN SELECT RAISE(ABORT, 'telling_append_only'); END;
CREATE TRIGGER telling_append_only_replace BEFORE INSERT ON telling
WHEN EXISTS (SELECT 1 FROM telling WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'telling_append_only'); END;

CREATE TRIGGER strung_append_only_update BEFORE UPDATE ON strung
BEGIN SELECT RAISE(ABORT, 'strung_append_only'); END;
CREATE TRIGGER strung_append_only_delete BEFORE DELETE ON strung
BEGIN SELECT RAISE(ABORT, 'strung_append_only'); END;
CREATE TRIGGER strung_append_only_replace BEFORE INSERT ON strung
WHEN EXISTS (SELECT 1 FROM strung WHERE job_event_id = NEW.job_event_id)
BEGIN SELECT RAISE(ABORT, 'strung_append_only'); END;

-- What is kept for ever, though some of its columns change.

CREATE TRIGGER lot_kept_delete BEFORE DELETE ON lot
BEGIN SELECT RAISE(ABORT, 'lot_kept'); END;
CREATE TRIGGER lot_kept_replace BEFORE INSERT ON lot
WHEN EXISTS (SELECT 1 FROM lot WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'lot_kept'); END;

CREATE TRIGGER job_kept_delete BEFORE DELETE ON job
BEGIN SELECT RAISE(ABORT, 'job_kept'); END;
CREATE TRIGGER job_kept_replace BEFORE INSERT ON job
WHEN EXISTS (SELECT 1 FROM job WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'job_kept'); END;

CREATE TRIGGER job_piece_kept_delete BEFORE DELETE ON job_piece
BEGIN SELECT RAISE(ABORT, 'job_piece_kept'); END;
CREATE TRIGGER job_piece_kept_replace BEFORE INSERT ON job_piece
WHEN EXISTS (SELECT 1 FROM job_piece WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'job_piece_kept'); END;

CREATE TRIGGER attempt_kept_delete BEFORE DELETE ON attempt
BEGIN SELECT RAISE(ABORT, 'attempt_kept'); END;
CREATE TRIGGER attempt_kept_replace BEFORE INSERT ON attempt
WHEN EXISTS (SELECT 1 FROM attempt WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'attempt_kept'); END;

CREATE TRIGGER ledger_kept_delete BEFORE DELETE ON ledger
BEGIN SELECT RAISE(ABORT, 'ledger_kept'); END;
CREATE TRIGGER ledger_kept_replace BEFORE INSERT ON ledger
WHEN EXISTS (SELECT 1 FROM ledger WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'ledger_kept'); END;

-- An id never changes, not by the name rowid either.

CREATE TRIGGER staff_id_fixed BEFORE UPDATE ON staff WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'staff_id_fixed'); END;
CREATE TRIGGER machine_id_fixed BEFORE UPDATE ON machine WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'machine_id_fixed'); END;
CREATE TRIGGER frame_model_id_fixed BEFORE UPDATE ON frame_model WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'frame_model_id_fixed'); END;
CREATE TRIGGER usual_cut_id_fixed BEFORE UPDATE ON usual_cut WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'usual_cut_id_fixed'); END;
CREATE TRIGGER customer_id_fixed BEFORE UPDATE ON customer WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'customer_id_fixed'); END;
CREATE TRIGGER contact_id_fixed BEFORE UPDATE ON contact WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'contact_id_fixed'); END;
CREATE TRIGGER racket_id_fixed BEFORE UPDATE ON racket WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'racket_id_fixed'); END;
CREATE TRIGGER string_article_id_fixed BEFORE UPDATE ON string_article WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'string_article_id_fixed'); END;
CREATE TRIGGER price_list_id_fixed BEFORE UPDATE ON price_list WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'price_list_id_fixed'); END;
CREATE TRIGGER price_line_id_fixed BEFORE UPDATE ON price_line WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'price_line_id_fixed'); END;
CREATE TRIGGER lot_id_fixed BEFORE UPDATE ON lot WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'lot_id_fixed'); END;
CREATE TRIGGER job_piece_id_fixed BEFORE UPDATE ON job_piece WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'job_piece_id_fixed'); END;
CREATE TRIGGER note_id_fixed BEFORE UPDATE ON note WHEN NEW.id IS NOT OLD.id
BEGIN SELECT RAISE(ABORT, 'note_id_fixed'); END;

CREATE TRIGGER ledger_facts_fixed BEFORE UPDATE ON ledger
WHEN NEW.id IS NOT OLD.id OR NEW.created_at IS NOT OLD.created_at
BEGIN SELECT RAISE(ABORT, 'ledger_facts_fixed'); END;

CREATE TRIGGER job_transition_fixed_insert BEFORE INSERT ON job_transition
BEGIN SELECT RAISE(ABORT, 'job_transition_fixed'); END;
CREATE TRIGGER job_transition_fixed_update BEFORE UPDATE ON job_transition
BEGIN SELECT RAISE(ABORT, 'job_transition_fixed'); END;
CREATE TRIGGER job_transition_fixed_delete BEFORE DELETE ON job_transition
BEGIN SELECT RAISE(ABORT, 'job_transition_fixed'); END;

-- A lot's length is the sum of its movements, and nobody else's word.
CREATE TRIGGER lot_starts_empty BEFORE INSERT ON lot WHEN NEW.length_mm <> 0
BEGIN SELECT RAISE(ABORT, 'lot_starts_empty'); END;

CREATE TRIGGER lot_length_is_its_movements BEFORE UPDATE OF length_mm ON lot
WHEN NEW.length_mm <> (SELECT coalesce(sum(change_mm), 0) FROM movement WHERE lot_id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'lot_length_is_its_movements'); END;

CREATE TRIGGER movement_allowed BEFORE INSERT ON movement
BEGIN
    SELECT CASE
        WHEN NEW.reason = 'cut' AND EXISTS (
                SELECT 1 FROM movement WHERE attempt_id = NEW.attempt_id AND reason = 'cut')
            THEN RAISE(ABORT, 'movement_one_cut_per_attempt')
        WHEN NEW.reason = 'cut' AND EXISTS (
                SELECT 1 FROM attempt WHERE id = NEW.attempt_id AND lost_at IS NOT NULL)
            THEN RAISE(ABORT, 'movement_cut_on_open_attempt')
        WHEN EXISTS (SELECT 1 FROM lot WHERE id = NEW.lot_id AND closed_at IS NOT NULL)
            THEN RAISE(ABORT, 'movement_lot_open')
        WHEN NEW.corrects_id IS NOT NULL AND NOT EXISTS (
                SELECT 1 FROM movement WHERE id = NEW.corrects_id AND lot_id = NEW.lot_id)
            THEN RAISE(ABORT, 'movement_corrects_same_lot')
    END;
END;

CREATE TRIGGER movement_sets_lot_length AFTER INSERT ON movement
BEGIN
    UPDATE lot SET length_mm = (SELECT sum(change_mm) FROM movement WHERE lot_id = NEW.lot_id)
    WHERE id = NEW.lot_id;
END;

-- Attempts follow one another: 1, 2, 3, the last one open.
CREATE TRIGGER attempt_allowed BEFORE INSERT ON attempt
BEGIN
    SELECT CASE
        WHEN NEW.lost_at IS NOT NULL THEN RAISE(ABORT, 'attempt_starts_open')
        WHEN NEW.number <> 1 + coalesce(
                (SELECT max(number) FROM attempt WHERE job_piece_id = NEW.job_piece_id), 0)
            THEN RAISE(ABORT, 'attempt_numbers_follow')
        WHEN EXISTS (SELECT 1 FROM attempt WHERE job_piece_id = NEW.job_piece_id AND lost_at IS NULL)
            THEN RAISE(ABORT, 'attempt_one_open')
    END;
END;

CREATE TRIGGER attempt_change_allowed BEFORE UPDATE ON attempt
BEGIN
    SELECT CASE
        WHEN NEW.id IS NOT OLD.id OR NEW.job_piece_id IS NOT OLD.job_piece_id
                OR NEW.number IS NOT OLD.number OR NEW.opened_at IS NOT OLD.opened_at
            THEN RAISE(ABORT, 'attempt_facts_fixed')
        WHEN OLD.lost_at IS NOT NULL THEN RAISE(ABORT, 'attempt_lost_once')
        WHEN NOT EXISTS (SELECT 1 FROM movement WHERE attempt_id = NEW.id AND reason = 'cut')
                AND NOT EXISTS (SELECT 1 FROM job_event WHERE attempt_id = NEW.id AND kind = 'cut')
            THEN RAISE(ABORT, 'attempt_lost_after_cut')
    END;
END;

-- A job's state follows from its events, its total from its charges.
CREATE TRIGGER job_starts_new BEFORE INSERT ON job WHEN NEW.state <> '' OR NEW.total_minor <> 0
BEGIN SELECT RAISE(ABORT, 'job_starts_new'); END;

CREATE TRIGGER job_change_allowed BEFORE UPDATE ON job
BEGIN
    SELECT CASE
        WHEN NEW.id IS NOT OLD.id OR NEW.number IS NOT OLD.number OR NEW.request_key IS NOT OLD.request_key
                OR NEW.logged_at IS NOT OLD.logged_at OR NEW.currency IS NOT OLD.currency
            THEN RAISE(ABORT, 'job_facts_fixed')
        WHEN NEW.row_version < OLD.row_version THEN RAISE(ABORT, 'job_version_grows')
        WHEN NEW.state <> OLD.state AND NOT EXISTS (
                SELECT 1 FROM job_transition
                WHERE from_state = OLD.state AND to_state = NEW.state
                    AND kind = (SELECT kind FROM job_event WHERE job_id = NEW.id ORDER BY id DESC LIMIT 1))
            THEN RAISE(ABORT, 'job_state_follows_events')
        WHEN NEW.total_minor <> OLD.total_minor
                AND NEW.total_minor <> (SELECT coalesce(sum(amount_minor), 0) FROM charge WHERE job_id = NEW.id)
            THEN RAISE(ABORT, 'job_total_is_its_charges')
    END;
END;

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

CREATE TRIGGER strung_belongs_to_its_event BEFORE INSERT ON strung
WHEN NOT EXISTS (
    SELECT 1 FROM job_event WHERE id = NEW.job_event_id AND job_id = NEW.job_id AND kind = 'strung')
BEGIN SELECT RAISE(ABORT, 'strung_belongs_to_its_event'); END;

CREATE TRIGGER handover_belongs_to_its_event BEFORE INSERT ON handover
WHEN NOT EXISTS (
    SELECT 1 FROM job_event WHERE id = NEW.job_event_id AND job_id = NEW.job_id AND kind = 'collected')
BEGIN SELECT RAISE(ABORT, 'handover_belongs_to_its_event'); END;

CREATE TRIGGER charge_allowed BEFORE INSERT ON charge
BEGIN
    SELECT CASE
        WHEN EXISTS (SELECT 1 FROM job WHERE id = NEW.job_id AND currency <> NEW.currency)
            THEN RAISE(ABORT, 'charge_in_the_jobs_currency')
        WHEN NEW.corrects_id IS NOT NULL AND NOT EXISTS (
                SELECT 1 FROM charge WHERE id = NEW.corrects_id AND job_id = NEW.job_id)
            THEN RAISE(ABORT, 'charge_corrects_same_job')
    END;
END;

CREATE TRIGGER charge_sets_job_total AFTER INSERT ON charge
BEGIN
    UPDATE job SET total_minor = (SELECT sum(amount_minor) FROM charge WHERE job_id = NEW.job_id)
    WHERE id = NEW.job_id;
END;

CREATE TRIGGER payment_allowed BEFORE INSERT ON payment
BEGIN
    SELECT CASE
        WHEN EXISTS (SELECT 1 FROM job WHERE id = NEW.job_id AND currency <> NEW.currency)
            THEN RAISE(ABORT, 'payment_in_the_jobs_currency')
        WHEN NEW.corrects_id IS NOT NULL AND NOT EXISTS (
                SELECT 1 FROM payment WHERE id = NEW.corrects_id AND job_id = NEW.job_id)
            THEN RAISE(ABORT, 'payment_corrects_same_job')
    END;
END;

-- Somebody whose racket is still here cannot be removed.
CREATE TRIGGER customer_change_allowed BEFORE UPDATE ON customer
BEGIN
    SELECT CASE
        WHEN NEW.row_version < OLD.row_version THEN RAISE(ABORT, 'customer_version_grows')
        WHEN NEW.removed_at IS NOT NULL AND OLD.removed_at IS NULL AND EXISTS (
                SELECT 1 FROM job WHERE customer_id = NEW.id AND state NOT IN ('collected', 'withdrawn'))
            THEN RAISE(ABORT, 'customer_racket_still_here')
    END;
END;
