SELECT id, name
FROM staff
ORDER BY id
