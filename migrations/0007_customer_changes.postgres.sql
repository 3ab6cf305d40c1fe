-- SPDX-License-Identifier: GPL-3.0-or-later

ALTER TABLE customer_change ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;

CREATE FUNCTION note_customer_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    INSERT INTO customer_change (customer_id) VALUES (NEW.id);
    RETURN NULL;
END $$;
CREATE TRIGGER customer_change AFTER INSERT OR UPDATE ON customer
    FOR EACH ROW EXECUTE FUNCTION note_customer_change();

CREATE TRIGGER customer_change_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON customer_change
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('customer_change_append_only');
