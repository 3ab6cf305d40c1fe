-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT came_with, remarks
FROM inspection
WHERE job_id = :job
