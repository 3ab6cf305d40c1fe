INSERT INTO staff (name)
VALUES (:name)
RETURNING id
