-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, currency
FROM ledger
WHERE id = 1
