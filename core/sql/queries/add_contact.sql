-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO contact (customer_id, kind, text, digits)
VALUES (:customer, :kind, :text, :digits)
RETURNING id
