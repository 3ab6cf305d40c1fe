-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT turns
FROM ledger_turn
WHERE id = 1
