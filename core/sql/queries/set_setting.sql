-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO setting (name, value)
VALUES (:name, :value)
ON CONFLICT (name) DO UPDATE SET value = excluded.value
