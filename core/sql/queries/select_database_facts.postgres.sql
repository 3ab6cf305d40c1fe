-- SPDX-License-Identifier: GPL-3.0-or-later
-- What must be known of a database before anything is written to it. Objects that an extension brought along are
-- nobody's ledger.
SELECT current_setting('server_encoding') AS encoding,
    coalesce(current_schema()::text, '') AS schema,
    current_setting('transaction_read_only') AS read_only,
    CASE WHEN EXISTS (
            SELECT 1 FROM pg_constraint
            WHERE conname = 'ledger_application' AND conrelid = to_regclass('ledger'))
        THEN 1 ELSE 0 END AS is_ours,
    (SELECT count(*)
        FROM pg_class
        WHERE relnamespace = to_regnamespace(quote_ident(current_schema()))
            AND NOT EXISTS (SELECT 1 FROM pg_depend WHERE objid = pg_class.oid AND deptype = 'e')) AS objects,
    CASE WHEN has_schema_privilege(current_schema(), 'CREATE') THEN 1 ELSE 0 END AS may_create,
    CASE WHEN has_table_privilege(to_regclass('schema_version'), 'SELECT')
            AND has_table_privilege(to_regclass('ledger_turn'), 'UPDATE')
        THEN 1 ELSE 0 END AS may_write
