-- SPDX-License-Identifier: GPL-3.0-or-later
-- A string that somebody wanted and the shop had none of: it counts as demand like a job. Nothing says who asked.

CREATE TABLE asked_for_none (
    id INTEGER PRIMARY KEY,
    request_key TEXT NOT NULL CONSTRAINT asked_for_none_request_key_key UNIQUE
        CONSTRAINT asked_for_none_request_key_length CHECK (length(request_key) BETWEEN 1 AND 100),
    article_id BIGINT NOT NULL REFERENCES string_article (id),
    at BIGINT NOT NULL,
    staff_id BIGINT NOT NULL REFERENCES staff (id),
    station TEXT NOT NULL
        CONSTRAINT asked_for_none_station CHECK (station IN ('counter', 'bench', 'stockroom', 'books'))
);
CREATE INDEX asked_for_none_by_time ON asked_for_none (at);
