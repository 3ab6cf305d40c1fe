-- SPDX-License-Identifier: GPL-3.0-or-later
-- On a connection that has not set recursive_triggers, REPLACE removes whatever row has one of the new row's keys
-- without asking the triggers on DELETE. So what must not go is held by each of its keys, under the key's own name.

CREATE TRIGGER lot_tag_key_insert BEFORE INSERT ON lot
WHEN EXISTS (SELECT 1 FROM lot WHERE tag = NEW.tag AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'lot_tag_key'); END;
CREATE TRIGGER lot_tag_key_update BEFORE UPDATE OF tag ON lot
WHEN EXISTS (SELECT 1 FROM lot WHERE tag = NEW.tag AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'lot_tag_key'); END;

-- Neither of a job's keys ever changes (job_facts_fixed).
CREATE TRIGGER job_keys_insert BEFORE INSERT ON job
BEGIN
    SELECT CASE
        WHEN EXISTS (SELECT 1 FROM job WHERE number = NEW.number AND id IS NOT NEW.id)
            THEN RAISE(ABORT, 'job_number_key')
        WHEN EXISTS (SELECT 1 FROM job WHERE request_key = NEW.request_key AND id IS NOT NEW.id)
            THEN RAISE(ABORT, 'job_request_key_key')
    END;
END;

CREATE TRIGGER job_piece_key_insert BEFORE INSERT ON job_piece
WHEN EXISTS (SELECT 1 FROM job_piece WHERE job_id = NEW.job_id AND role = NEW.role AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'job_piece_job_id_role_key'); END;
CREATE TRIGGER job_piece_key_update BEFORE UPDATE OF job_id, role ON job_piece
WHEN EXISTS (SELECT 1 FROM job_piece WHERE job_id = NEW.job_id AND role = NEW.role AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'job_piece_job_id_role_key'); END;

CREATE TRIGGER customer_key_insert BEFORE INSERT ON customer
WHEN EXISTS (SELECT 1 FROM customer WHERE request_key = NEW.request_key AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'customer_by_request_key'); END;
CREATE TRIGGER customer_key_update BEFORE UPDATE OF request_key ON customer
WHEN EXISTS (SELECT 1 FROM customer WHERE request_key = NEW.request_key AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'customer_by_request_key'); END;

CREATE TRIGGER racket_keys_insert BEFORE INSERT ON racket
BEGIN
    SELECT CASE
        WHEN EXISTS (
                SELECT 1 FROM racket
                WHERE customer_id = NEW.customer_id AND frame_model_id = NEW.frame_model_id AND mark = NEW.mark
                    AND id IS NOT NEW.id)
            THEN RAISE(ABORT, 'racket_customer_id_frame_model_id_mark_key')
        WHEN EXISTS (SELECT 1 FROM racket WHERE request_key = NEW.request_key AND id IS NOT NEW.id)
            THEN RAISE(ABORT, 'racket_by_request_key')
    END;
END;
CREATE TRIGGER racket_keys_update BEFORE UPDATE OF customer_id, frame_model_id, mark, request_key ON racket
BEGIN
    SELECT CASE
        WHEN EXISTS (
                SELECT 1 FROM racket
                WHERE customer_id = NEW.customer_id AND frame_model_id = NEW.frame_model_id AND mark = NEW.mark
                    AND id IS NOT NEW.id)
            THEN RAISE(ABORT, 'racket_customer_id_frame_model_id_mark_key')
        WHEN EXISTS (SELECT 1 FROM racket WHERE request_key = NEW.request_key AND id IS NOT NEW.id)
            THEN RAISE(ABORT, 'racket_by_request_key')
    END;
END;

CREATE TRIGGER string_article_code_key_insert BEFORE INSERT ON string_article
WHEN EXISTS (SELECT 1 FROM string_article WHERE code = NEW.code AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'string_article_code_key'); END;
CREATE TRIGGER string_article_code_key_update BEFORE UPDATE OF code ON string_article
WHEN EXISTS (SELECT 1 FROM string_article WHERE code = NEW.code AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'string_article_code_key'); END;

CREATE TRIGGER price_list_valid_from_key_insert BEFORE INSERT ON price_list
WHEN EXISTS (SELECT 1 FROM price_list WHERE valid_from = NEW.valid_from AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'price_list_valid_from_key'); END;
CREATE TRIGGER price_list_valid_from_key_update BEFORE UPDATE OF valid_from ON price_list
WHEN EXISTS (SELECT 1 FROM price_list WHERE valid_from = NEW.valid_from AND id IS NOT NEW.id)
BEGIN SELECT RAISE(ABORT, 'price_list_valid_from_key'); END;

-- Of who took a racket only the name changes, and only to nothing: somebody asked to be removed.
CREATE TRIGGER handover_facts_fixed BEFORE UPDATE ON handover
WHEN NEW.job_event_id IS NOT OLD.job_event_id OR NEW.job_id IS NOT OLD.job_id
    OR NEW.on_account IS NOT OLD.on_account OR (NEW.taken_by IS NOT OLD.taken_by AND NEW.taken_by IS NOT '')
BEGIN SELECT RAISE(ABORT, 'handover_facts_fixed'); END;
CREATE TRIGGER handover_kept_delete BEFORE DELETE ON handover
BEGIN SELECT RAISE(ABORT, 'handover_kept'); END;
CREATE TRIGGER handover_kept_replace BEFORE INSERT ON handover
WHEN EXISTS (SELECT 1 FROM handover WHERE job_event_id = NEW.job_event_id)
BEGIN SELECT RAISE(ABORT, 'handover_kept'); END;

-- A note is never altered, and goes with its customer only.
DROP TRIGGER note_id_fixed;
CREATE TRIGGER note_append_only_update BEFORE UPDATE ON note
BEGIN SELECT RAISE(ABORT, 'note_append_only'); END;
CREATE TRIGGER note_append_only_replace BEFORE INSERT ON note
WHEN EXISTS (SELECT 1 FROM note WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'note_append_only'); END;
CREATE TRIGGER note_kept_delete BEFORE DELETE ON note
WHEN NOT EXISTS (
    SELECT 1 FROM job JOIN customer ON customer.id = job.customer_id
    WHERE job.id = OLD.job_id AND customer.removed_at IS NOT NULL)
BEGIN SELECT RAISE(ABORT, 'note_kept'); END;
