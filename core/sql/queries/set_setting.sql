INSERT INTO setting (name, value)
VALUES (:name, :value)
ON CONFLICT (name) DO UPDATE SET value = excluded.value
