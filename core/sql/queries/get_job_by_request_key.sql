SELECT id
FROM job
WHERE request_key = :request_key
