-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO staff (name, strings, retired)
VALUES (:name, :strings, :retired)
RETURNING id
