-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, name, sport, hoop_length_mm, hoop_width_mm, head_area_cm2, open_throat, widest_from_throat,
       head_exponent, throat_exponent, wall_mm, outermost_main_mm, last_cross_mm, mains, crosses, mains_span_mm,
       crosses_span_mm, crosses_centre_mm, spread, mains_start, lowest_hundredths, lowest_unit,
       highest_hundredths, highest_unit, forced_side, forced_side_reason, mounting_mark, crosses_from_throat,
       note, row_version
FROM frame_model
WHERE id = :frame
