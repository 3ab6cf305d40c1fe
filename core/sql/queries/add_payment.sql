INSERT INTO payment (job_id, amount_minor, currency, way, at, staff_id, station)
SELECT job.id, :amount_minor, job.currency, :way, :at, :staff, :station
FROM job
WHERE job.id = :job AND job.currency = :currency
RETURNING id
