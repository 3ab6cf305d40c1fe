-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE job
SET bench_step = :step, row_version = row_version + 1
WHERE id = :job
