-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE string_article
SET name = :name, colour = :colour, sport = :sport, material = :material, diameter_um = :diameter_um,
    gauge_name = :gauge_name, milligrams_per_metre = :milligrams_per_metre, stretch_percent = :stretch_percent,
    retired = :retired, packet_mm = :packet_mm, row_version = row_version + 1
WHERE id = :article AND row_version = :version
