-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'the ledger says ' || count(*) || ' times what it is' AS what
FROM ledger
HAVING count(*) <> 1
