-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM contact
WHERE customer_id = :customer
