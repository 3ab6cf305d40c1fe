-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE ledger
SET currency = :currency
WHERE id = 1
    AND NOT EXISTS (SELECT 1 FROM price_list)
    AND NOT EXISTS (SELECT 1 FROM lot)
    AND NOT EXISTS (SELECT 1 FROM job)
