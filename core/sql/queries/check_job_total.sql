-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT 'job ' || job.number || ': ' || job.total_minor || ' in the book, ' || coalesce(charged.sum_minor, 0)
    || ' by its charges' AS what
FROM job
LEFT JOIN (SELECT job_id, sum(amount_minor) AS sum_minor FROM charge GROUP BY job_id) AS charged
    ON charged.job_id = job.id
WHERE job.total_minor <> coalesce(charged.sum_minor, 0)
ORDER BY job.id
