-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT string_article.code AS string,
       asked_for_none.at,
       staff.name AS person,
       asked_for_none.station
FROM asked_for_none
JOIN string_article ON string_article.id = asked_for_none.article_id
JOIN staff ON staff.id = asked_for_none.staff_id
ORDER BY asked_for_none.id
