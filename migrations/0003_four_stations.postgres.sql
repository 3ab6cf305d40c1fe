-- SPDX-License-Identifier: GPL-3.0-or-later
-- What only PostgreSQL needs: wide ids, and the guards as triggers.

ALTER TABLE delivery ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE consent ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;
ALTER TABLE asked_change ALTER COLUMN id TYPE BIGINT, ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY;

-- A racket that was handed over by mistake is brought back, and one can be handed over again afterwards.
ALTER TABLE job_event DROP CONSTRAINT job_event_kind;
ALTER TABLE job_event ADD CONSTRAINT job_event_kind CHECK (kind IN ('logged', 'taken', 'put-down', 'cut', 'lost',
    'strung', 'reopened', 'collected', 'brought-back', 'waiting', 'resumed', 'withdrawn'));
CREATE INDEX job_event_by_time ON job_event (at);

ALTER TABLE handover DROP CONSTRAINT handover_pkey;
ALTER TABLE handover ADD PRIMARY KEY (job_event_id);
ALTER TABLE handover ADD COLUMN on_account INTEGER NOT NULL DEFAULT 0
    CONSTRAINT handover_on_account CHECK (on_account IN (0, 1));
CREATE INDEX handover_by_job ON handover (job_id);

DROP TRIGGER job_transition_fixed ON job_transition;
INSERT INTO job_transition (from_state, kind, to_state) VALUES
    ('collected', 'brought-back', 'strung'),
    ('withdrawn', 'resumed', 'logged');
CREATE TRIGGER job_transition_fixed BEFORE INSERT OR UPDATE OR DELETE OR TRUNCATE ON job_transition
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('job_transition_fixed');

CREATE TRIGGER delivery_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON delivery
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('delivery_append_only');
CREATE TRIGGER consent_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON consent
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('consent_append_only');
CREATE TRIGGER asked_change_kept BEFORE DELETE OR TRUNCATE ON asked_change
    FOR EACH STATEMENT EXECUTE FUNCTION guard_refuse('asked_change_kept');
CREATE TRIGGER asked_change_seen_once BEFORE UPDATE ON asked_change FOR EACH ROW
    WHEN (OLD.seen_at IS NOT NULL) EXECUTE FUNCTION guard_refuse('asked_change_seen_once');
