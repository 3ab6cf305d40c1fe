-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, code, name, colour, sport, material, diameter_um, gauge_name, milligrams_per_metre, stretch_percent,
       retired, row_version, packet_mm
FROM string_article
ORDER BY code, id
