-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO consent_words (consent_id, agreed_by, words)
VALUES (:consent, :agreed_by, :words)
