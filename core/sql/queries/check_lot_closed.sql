-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'lot ' || tag || ': closed with ' || length_mm || ' mm on it' AS what
FROM lot
WHERE closed_at IS NOT NULL AND length_mm <> 0
ORDER BY id
