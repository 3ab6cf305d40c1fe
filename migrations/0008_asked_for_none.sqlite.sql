-- SPDX-License-Identifier: GPL-3.0-or-later
CREATE TRIGGER asked_for_none_append_only_update BEFORE UPDATE ON asked_for_none
BEGIN SELECT RAISE(ABORT, 'asked_for_none_append_only'); END;
CREATE TRIGGER asked_for_none_append_only_delete BEFORE DELETE ON asked_for_none
BEGIN SELECT RAISE(ABORT, 'asked_for_none_append_only'); END;
CREATE TRIGGER asked_for_none_append_only_replace BEFORE INSERT ON asked_for_none
WHEN EXISTS (SELECT 1 FROM asked_for_none WHERE id = NEW.id OR request_key = NEW.request_key)
BEGIN SELECT RAISE(ABORT, 'asked_for_none_append_only'); END;
