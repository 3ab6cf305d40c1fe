-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id
FROM job
WHERE racket_id = :racket
ORDER BY logged_at DESC, id DESC
