-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO asked_for_none (request_key, article_id, at, staff_id, station)
VALUES (:request_key, :article, :at, :staff, :station)
