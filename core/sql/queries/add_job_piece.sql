-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO job_piece (job_id, role, article_id, source, lot_id, pinned, planned_mm, expected_mm, set_mm)
VALUES (:job, :role, :article, :source, :lot, :pinned, :planned_mm, :expected_mm, :set_mm)
RETURNING id
