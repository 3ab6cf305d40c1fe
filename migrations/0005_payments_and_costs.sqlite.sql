-- SPDX-License-Identifier: GPL-3.0-or-later
-- A payment is not replaced by another under its request key either.

DROP TRIGGER payment_append_only_replace;
CREATE TRIGGER payment_append_only_replace BEFORE INSERT ON payment
WHEN EXISTS (SELECT 1 FROM payment WHERE id = NEW.id OR request_key = NEW.request_key)
BEGIN SELECT RAISE(ABORT, 'payment_append_only'); END;
