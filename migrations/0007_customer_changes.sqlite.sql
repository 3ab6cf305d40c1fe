-- SPDX-License-Identifier: GPL-3.0-or-later

CREATE TRIGGER customer_change_of_insert AFTER INSERT ON customer
BEGIN INSERT INTO customer_change (customer_id) VALUES (NEW.id); END;
CREATE TRIGGER customer_change_of_update AFTER UPDATE ON customer
BEGIN INSERT INTO customer_change (customer_id) VALUES (NEW.id); END;

CREATE TRIGGER customer_change_append_only_update BEFORE UPDATE ON customer_change
BEGIN SELECT RAISE(ABORT, 'customer_change_append_only'); END;
CREATE TRIGGER customer_change_append_only_delete BEFORE DELETE ON customer_change
BEGIN SELECT RAISE(ABORT, 'customer_change_append_only'); END;
CREATE TRIGGER customer_change_append_only_replace BEFORE INSERT ON customer_change
WHEN EXISTS (SELECT 1 FROM customer_change WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'customer_change_append_only'); END;
