-- SPDX-License-Identifier: GPL-3.0-or-later
-- A lot with what its movements say: nothing ever cut or lost from it; and held against a tape after the last length
-- came or went.
CREATE VIEW lot_book AS
SELECT lot.id, lot.tag, lot.article_id, lot.kind, lot.owner_customer_id, lot.nominal_mm, lot.length_mm,
    lot.price_minor, lot.shipping_minor, lot.currency, lot.batch, lot.received_at, lot.closed_at,
    CASE WHEN EXISTS (SELECT 1 FROM movement WHERE movement.lot_id = lot.id AND movement.reason IN ('cut', 'lost'))
        THEN 0 ELSE 1 END AS sealed,
    CASE WHEN (SELECT movement.reason
            FROM movement
            WHERE movement.lot_id = lot.id AND movement.reason IN ('received', 'measured', 'cut', 'lost')
            ORDER BY movement.id DESC
            LIMIT 1) = 'measured'
        THEN 1 ELSE 0 END AS measured_since_last_cut
FROM lot;

-- What promised string is made of: pieces of jobs still to be strung whose open attempt has not been cut. A customer's
-- own set comes off no lot, so there the cut is known by its event alone.
CREATE VIEW uncut_piece AS
SELECT job_piece.id AS job_piece_id, job_piece.job_id, attempt.id AS attempt_id, job_piece.role,
    job_piece.article_id, job_piece.source, job_piece.lot_id, job_piece.pinned, job_piece.planned_mm,
    CASE WHEN job_piece.source = 'shop-lot' THEN NULL ELSE job.customer_id END AS owner_customer_id
FROM job_piece
JOIN job ON job.id = job_piece.job_id
JOIN attempt ON attempt.job_piece_id = job_piece.id AND attempt.lost_at IS NULL
WHERE job.state IN ('logged', 'on-the-machine', 'waiting')
    AND NOT EXISTS (SELECT 1 FROM movement WHERE movement.attempt_id = attempt.id AND movement.reason = 'cut')
    AND NOT EXISTS (SELECT 1 FROM job_event WHERE job_event.attempt_id = attempt.id AND job_event.kind = 'cut');
