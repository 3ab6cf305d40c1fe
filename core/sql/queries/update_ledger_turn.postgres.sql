-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE ledger_turn
SET turns = turns + 1
WHERE id = 1
