-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id
FROM job
WHERE number = :number
