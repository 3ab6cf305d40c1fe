-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO staff (name)
VALUES (:name)
RETURNING id
