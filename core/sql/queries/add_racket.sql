INSERT INTO racket (customer_id, frame_model_id, mark)
VALUES (:customer, :frame, :mark)
RETURNING id
