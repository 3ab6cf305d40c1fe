-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT words
FROM note
WHERE job_id = :job
ORDER BY id
