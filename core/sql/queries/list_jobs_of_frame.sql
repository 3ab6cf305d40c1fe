-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT job.id
FROM job
JOIN racket ON racket.id = job.racket_id
WHERE racket.frame_model_id = :frame
ORDER BY job.logged_at DESC, job.id DESC
LIMIT :at_most
