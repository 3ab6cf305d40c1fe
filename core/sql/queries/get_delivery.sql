-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, supplier, shipping_minor, currency, at, staff_id, station
FROM delivery
WHERE id = :delivery
