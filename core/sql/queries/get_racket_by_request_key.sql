-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id
FROM racket
WHERE request_key = :request_key
