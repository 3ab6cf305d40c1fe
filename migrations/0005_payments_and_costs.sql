-- SPDX-License-Identifier: GPL-3.0-or-later
-- What somebody pays once is taken once, whatever is pressed twice or lost on the way. What an extra costs the shop
-- stands beside its price, and is copied into a job with it; nothing: not known.

ALTER TABLE payment ADD COLUMN request_key TEXT
    CONSTRAINT payment_request_key_length CHECK (length(request_key) BETWEEN 1 AND 100);
CREATE UNIQUE INDEX payment_by_request_key ON payment (request_key);

ALTER TABLE price_line ADD COLUMN cost_minor BIGINT CONSTRAINT price_line_cost CHECK (cost_minor >= 0);
ALTER TABLE charge ADD COLUMN cost_minor BIGINT CONSTRAINT charge_cost CHECK (cost_minor >= 0);
