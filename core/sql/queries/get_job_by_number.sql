SELECT id
FROM job
WHERE number = :number
