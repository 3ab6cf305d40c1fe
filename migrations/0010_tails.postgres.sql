-- SPDX-License-Identifier: GPL-3.0-or-later
ALTER TABLE tails ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;

CREATE TRIGGER tails_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON tails
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('tails_append_only');

-- Nothing is cut off what was never cut.
CREATE FUNCTION guard_tails() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NOT EXISTS (SELECT 1 FROM movement WHERE attempt_id = NEW.attempt_id AND reason = 'cut')
            AND NOT EXISTS (SELECT 1 FROM job_event WHERE attempt_id = NEW.attempt_id AND kind = 'cut') THEN
        RAISE EXCEPTION 'tails_after_cut' USING ERRCODE = 'RW001';
    END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER tails_after_cut BEFORE INSERT ON tails FOR EACH ROW EXECUTE FUNCTION guard_tails();
