-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT conname::text AS name, conrelid::regclass::text AS owner, pg_get_expr(conbin, conrelid) AS expression
FROM pg_constraint
WHERE connamespace = to_regnamespace(quote_ident(current_schema())) AND contype = 'c'
ORDER BY name
