-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT asked_for_none.article_id
FROM asked_for_none
WHERE asked_for_none.request_key = :request_key
