-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT racket.id AS racket,
       racket.customer_id AS customer,
       frame_model.name AS frame,
       racket.mark
FROM racket
JOIN frame_model ON frame_model.id = racket.frame_model_id
ORDER BY racket.id
