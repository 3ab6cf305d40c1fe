-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO racket (customer_id, frame_model_id, mark)
VALUES (:customer, :frame, :mark)
RETURNING id
