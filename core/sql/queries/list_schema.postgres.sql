-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'trigger' AS type, tgname::text AS name,
    CASE WHEN tgenabled = 'O' THEN 'on' ELSE 'off' END AS state
FROM pg_trigger
JOIN pg_class ON pg_class.oid = tgrelid
WHERE relnamespace = to_regnamespace(quote_ident(current_schema())) AND NOT tgisinternal
UNION ALL
SELECT 'function', proname::text, prosrc
FROM pg_proc
WHERE pronamespace = to_regnamespace(quote_ident(current_schema()))
UNION ALL
SELECT 'constraint', conname::text, CASE WHEN convalidated THEN 'on' ELSE 'off' END
FROM pg_constraint
WHERE connamespace = to_regnamespace(quote_ident(current_schema()))
UNION ALL
SELECT CASE relkind WHEN 'i' THEN 'index' WHEN 'v' THEN 'view' ELSE 'table' END, relname::text, 'on'
FROM pg_class
WHERE relnamespace = to_regnamespace(quote_ident(current_schema())) AND relkind IN ('i', 'v', 'r')
UNION ALL
SELECT 'reference', conname::text, CASE WHEN bool_and(tgenabled = 'O') THEN 'on' ELSE 'off' END
FROM pg_constraint
JOIN pg_trigger ON tgconstraint = pg_constraint.oid
WHERE connamespace = to_regnamespace(quote_ident(current_schema())) AND contype = 'f'
GROUP BY conname
ORDER BY type, name
