-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM usual_cut
WHERE frame_model_id = :frame AND role = :role AND COALESCE(material, '') = :material AND route = :route
