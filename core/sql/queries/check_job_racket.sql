-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ': for customer ' || job.customer_id || ', with racket ' || racket.id
    || ' of customer ' || racket.customer_id AS what
FROM job
JOIN racket ON racket.id = job.racket_id
WHERE racket.customer_id <> job.customer_id
ORDER BY job.id
