-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO movement_words (movement_id, words)
VALUES (:movement, :words)
