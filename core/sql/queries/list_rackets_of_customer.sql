-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT racket.id, racket.customer_id, racket.frame_model_id, racket.mark
FROM racket
JOIN frame_model ON frame_model.id = racket.frame_model_id
WHERE racket.customer_id = :customer
ORDER BY frame_model.name, racket.mark, racket.id
