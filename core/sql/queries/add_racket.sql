-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO racket (request_key, customer_id, frame_model_id, mark)
VALUES (:request_key, :customer, :frame, :mark)
RETURNING id
