SELECT id, customer_id, frame_model_id, mark
FROM racket
WHERE id = :racket
