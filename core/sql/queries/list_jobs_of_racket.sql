SELECT id
FROM job
WHERE racket_id = :racket
ORDER BY logged_at DESC, id DESC
