-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO string_article (
    code, name, colour, sport, material, diameter_um, gauge_name, milligrams_per_metre, stretch_percent, retired,
    packet_mm)
VALUES (
    :code, :name, :colour, :sport, :material, :diameter_um, :gauge_name, :milligrams_per_metre, :stretch_percent,
    :retired, :packet_mm)
RETURNING id
