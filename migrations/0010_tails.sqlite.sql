-- SPDX-License-Identifier: GPL-3.0-or-later
CREATE TRIGGER tails_append_only_update BEFORE UPDATE ON tails
BEGIN SELECT RAISE(ABORT, 'tails_append_only'); END;
CREATE TRIGGER tails_append_only_delete BEFORE DELETE ON tails
BEGIN SELECT RAISE(ABORT, 'tails_append_only'); END;
CREATE TRIGGER tails_append_only_replace BEFORE INSERT ON tails
WHEN EXISTS (SELECT 1 FROM tails WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'tails_append_only'); END;

-- Nothing is cut off what was never cut.
CREATE TRIGGER tails_after_cut BEFORE INSERT ON tails
WHEN NOT EXISTS (SELECT 1 FROM movement WHERE attempt_id = NEW.attempt_id AND reason = 'cut')
    AND NOT EXISTS (SELECT 1 FROM job_event WHERE attempt_id = NEW.attempt_id AND kind = 'cut')
BEGIN SELECT RAISE(ABORT, 'tails_after_cut'); END;
