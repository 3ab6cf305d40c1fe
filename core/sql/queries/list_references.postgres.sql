-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT conname::text AS name, conrelid::regclass::text AS child, child.attname::text AS child_column,
    confrelid::regclass::text AS parent, parent.attname::text AS parent_column
FROM pg_constraint
JOIN pg_attribute AS child ON child.attrelid = conrelid AND child.attnum = conkey[1]
JOIN pg_attribute AS parent ON parent.attrelid = confrelid AND parent.attnum = confkey[1]
WHERE connamespace = to_regnamespace(quote_ident(current_schema())) AND contype = 'f'
ORDER BY name
