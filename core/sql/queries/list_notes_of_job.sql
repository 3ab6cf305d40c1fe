SELECT words
FROM note
WHERE job_id = :job
ORDER BY id
