SELECT value
FROM setting
WHERE name = :name
