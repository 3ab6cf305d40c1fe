-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, customer_id, frame_model_id, mark
FROM racket
WHERE id = :racket
