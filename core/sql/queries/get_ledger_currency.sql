SELECT id, currency
FROM ledger
WHERE id = 1
