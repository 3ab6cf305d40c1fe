-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO ledger (id, application, created_at, time_zone, currency)
SELECT 1, 'reelwright', :created_at, :time_zone, :currency
WHERE NOT EXISTS (SELECT 1 FROM ledger)
