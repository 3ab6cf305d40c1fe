-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.id
FROM job
ORDER BY job.id
LIMIT 1
