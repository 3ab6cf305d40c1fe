-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT value
FROM setting
WHERE name = :name
