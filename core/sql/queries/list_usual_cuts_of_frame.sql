-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, frame_model_id, role, material, route, cut_mm, short_side_mm
FROM usual_cut
WHERE frame_model_id = :frame
ORDER BY CASE role WHEN 'mains' THEN 0 WHEN 'crosses' THEN 1 ELSE 2 END, COALESCE(material, ''), route, id
