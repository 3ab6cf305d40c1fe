-- SPDX-License-Identifier: GPL-3.0-or-later
ALTER TABLE asked_for_none ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
CREATE TRIGGER asked_for_none_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON asked_for_none
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('asked_for_none_append_only');
