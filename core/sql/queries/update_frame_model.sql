-- SPDX-License-Identifier: GPL-3.0-or-later
UPDATE frame_model
SET name = :name, search_key = :search_key, sport = :sport, hoop_length_mm = :hoop_length_mm,
    hoop_width_mm = :hoop_width_mm, head_area_cm2 = :head_area_cm2, open_throat = :open_throat,
    widest_from_throat = :widest_from_throat, head_exponent = :head_exponent, throat_exponent = :throat_exponent,
    wall_mm = :wall_mm, outermost_main_mm = :outermost_main_mm, last_cross_mm = :last_cross_mm, mains = :mains,
    crosses = :crosses, mains_span_mm = :mains_span_mm, crosses_span_mm = :crosses_span_mm,
    crosses_centre_mm = :crosses_centre_mm, spread = :spread, mains_start = :mains_start,
    lowest_hundredths = :lowest_hundredths, lowest_unit = :lowest_unit, highest_hundredths = :highest_hundredths,
    highest_unit = :highest_unit, forced_side = :forced_side, forced_side_reason = :forced_side_reason,
    mounting_mark = :mounting_mark, crosses_from_throat = :crosses_from_throat, note = :note,
    row_version = row_version + 1
WHERE id = :frame AND row_version = :version
