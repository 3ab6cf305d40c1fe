-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE stock_take
SET ended_at = :at, ended_by_staff_id = :staff
WHERE id = :stock_take AND ended_at IS NULL
