-- SPDX-License-Identifier: GPL-3.0-or-later
-- PostgreSQL holds what must not go by its keys already; what is new for both is who took a racket, and notes.

-- Of who took a racket only the name changes, and only to nothing: somebody asked to be removed.
CREATE TRIGGER handover_facts_fixed BEFORE UPDATE ON handover FOR EACH ROW
    WHEN (NEW.job_event_id IS DISTINCT FROM OLD.job_event_id OR NEW.job_id IS DISTINCT FROM OLD.job_id
        OR NEW.on_account IS DISTINCT FROM OLD.on_account
        OR (NEW.taken_by IS DISTINCT FROM OLD.taken_by AND NEW.taken_by IS DISTINCT FROM ''))
    EXECUTE FUNCTION guard_refuse('handover_facts_fixed');
CREATE TRIGGER handover_kept BEFORE DELETE OR TRUNCATE ON handover
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('handover_kept');

-- A note is never altered, and goes with its customer only.
DROP TRIGGER note_id_fixed ON note;
CREATE TRIGGER note_append_only BEFORE UPDATE OR TRUNCATE ON note
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('note_append_only');
CREATE FUNCTION guard_note_removal() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NOT EXISTS (
            SELECT 1 FROM job JOIN customer ON customer.id = job.customer_id
            WHERE job.id = OLD.job_id AND customer.removed_at IS NOT NULL) THEN
        RAISE EXCEPTION 'note_kept' USING ERRCODE = 'RW001';
    END IF;
    RETURN OLD;
END $$;
CREATE TRIGGER note_kept BEFORE DELETE ON note FOR EACH ROW EXECUTE FUNCTION guard_note_removal();
