-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO schema_version (version, name, applied_at)
VALUES (:version, :name, :applied_at)
