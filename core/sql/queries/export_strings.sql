-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT string_article.code,
       string_article.name,
       string_article.colour,
       string_article.sport,
       string_article.material,
       string_article.diameter_um,
       string_article.milligrams_per_metre AS mg_per_m,
       string_article.packet_mm
FROM string_article
ORDER BY string_article.code
