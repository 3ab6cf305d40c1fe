-- SPDX-License-Identifier: GPL-3.0-or-later
-- Each change of a customer is numbered, so that whoever keeps everybody's name in mind to find people by it can tell
-- what is new and read that alone. It says that somebody changed, and never what.

CREATE TABLE customer_change (
    id INTEGER PRIMARY KEY,
    customer_id BIGINT NOT NULL REFERENCES customer (id)
);
CREATE INDEX customer_change_by_customer ON customer_change (customer_id);
