-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO usual_cut (frame_model_id, role, material, route, cut_mm, short_side_mm)
VALUES (:frame, :role, :material, :route, :cut_mm, :short_side_mm)
ON CONFLICT (frame_model_id, role, COALESCE(material, ''), route)
DO UPDATE SET cut_mm = excluded.cut_mm, short_side_mm = excluded.short_side_mm
