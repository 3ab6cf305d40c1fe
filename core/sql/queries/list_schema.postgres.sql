-- SPDX-License-Identifier: GPL-3.0-or-later
-- Everything the schema is made of: its kind and name, whether it is awake, what a function does, and how each thing is
-- defined. Names of things outside the search path are written with their schema.
SELECT 'trigger' AS type, tgname::text AS name, CASE WHEN tgenabled = 'O' THEN 'on' ELSE 'off' END AS state, '' AS body,
    pg_get_triggerdef(pg_trigger.oid, true) AS definition
FROM pg_trigger
JOIN pg_class ON pg_class.oid = tgrelid
WHERE relnamespace = to_regnamespace(quote_ident(current_schema())) AND NOT tgisinternal
UNION ALL
SELECT 'function', proname::text, 'on', prosrc,
    pg_get_function_identity_arguments(pg_proc.oid) || ' ' || format_type(prorettype, NULL) || ' ' || lanname || ' '
    || prokind::text || ' ' || prosecdef::text || ' ' || coalesce(proconfig::text, '') || ' ' || prosrc
FROM pg_proc
JOIN pg_language ON pg_language.oid = prolang
WHERE pronamespace = to_regnamespace(quote_ident(current_schema()))
UNION ALL
SELECT 'constraint', conname::text, CASE WHEN convalidated THEN 'on' ELSE 'off' END, '',
    conrelid::regclass::text || ' ' || replace(pg_get_constraintdef(pg_constraint.oid, true), ' NOT VALID', '')
FROM pg_constraint
WHERE connamespace = to_regnamespace(quote_ident(current_schema()))
UNION ALL
SELECT 'index', relname::text, CASE WHEN indisvalid AND indisready THEN 'on' ELSE 'off' END, '',
    pg_get_indexdef(indexrelid, 0, true)
FROM pg_index
JOIN pg_class ON pg_class.oid = indexrelid
WHERE relnamespace = to_regnamespace(quote_ident(current_schema()))
UNION ALL
SELECT 'view', relname::text, 'on', '',
    relkind::text || ' ' || coalesce(reloptions::text, '') || ' ' || pg_get_viewdef(oid, true)
FROM pg_class
WHERE relnamespace = to_regnamespace(quote_ident(current_schema())) AND relkind IN ('v', 'm')
UNION ALL
SELECT 'table', relname::text, 'on', '',
    relkind::text || ' ' || relpersistence::text || ' ' || relrowsecurity::text || ' ' || relforcerowsecurity::text
    || ' ' || relispartition::text
FROM pg_class
WHERE relnamespace = to_regnamespace(quote_ident(current_schema())) AND relkind IN ('r', 'p', 'f')
UNION ALL
SELECT 'column', relname || '.' || attname, 'on', '',
    format_type(atttypid, atttypmod) || ' ' || attnotnull::text || ' ' || attidentity::text || ' '
    || attgenerated::text || ' ' || coalesce(pg_get_expr(adbin, adrelid, true), '') || ' ' || coalesce(collname, '')
FROM pg_attribute
JOIN pg_class ON pg_class.oid = attrelid
LEFT JOIN pg_attrdef ON adrelid = attrelid AND adnum = attnum
LEFT JOIN pg_collation ON pg_collation.oid = attcollation
WHERE relnamespace = to_regnamespace(quote_ident(current_schema())) AND relkind IN ('r', 'p', 'f') AND attnum > 0
    AND NOT attisdropped
UNION ALL
SELECT 'sequence', relname::text, 'on', '',
    format_type(seqtypid, NULL) || ' ' || seqstart || ' ' || seqincrement || ' ' || seqmin || ' ' || seqmax || ' '
    || seqcycle::text
FROM pg_sequence
JOIN pg_class ON pg_class.oid = seqrelid
WHERE relnamespace = to_regnamespace(quote_ident(current_schema()))
UNION ALL
SELECT 'rule', rulename::text, CASE WHEN ev_enabled = 'O' THEN 'on' ELSE 'off' END, '',
    pg_get_ruledef(pg_rewrite.oid, true)
FROM pg_rewrite
JOIN pg_class ON pg_class.oid = ev_class
WHERE relnamespace = to_regnamespace(quote_ident(current_schema())) AND rulename <> '_RETURN'
UNION ALL
SELECT 'policy', polname::text, 'on', '', polrelid::regclass::text
FROM pg_policy
JOIN pg_class ON pg_class.oid = polrelid
WHERE relnamespace = to_regnamespace(quote_ident(current_schema()))
UNION ALL
SELECT 'reference', conname::text, CASE WHEN bool_and(tgenabled = 'O') THEN 'on' ELSE 'off' END, '', ''
FROM pg_constraint
JOIN pg_trigger ON tgconstraint = pg_constraint.oid
WHERE connamespace = to_regnamespace(quote_ident(current_schema())) AND contype = 'f'
GROUP BY conname
ORDER BY type, name, definition
