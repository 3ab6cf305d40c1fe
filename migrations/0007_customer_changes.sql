-- SPDX-License-Identifier: GPL-3.0-or-later
-- Each change of a customer is numbered, so that whoever keeps everybody's name in mind to find people by it can tell
-- what is new and read that alone. It says that somebody changed, and never what.

CREATE TABLE customer_change (
    id INTEGER PRIMARY KEY,
    customer_id BIGINT NOT NULL REFERENCES customer (id)
);
CREATE INDEX customer_change_by_customer ON customer_change (customer_id);

-- Whoever is looked for is shown with the string of theirs that is kept here. Of all lots that there ever were, few are
-- open.
CREATE INDEX lot_open ON lot (article_id, received_at, id) WHERE closed_at IS NULL;
