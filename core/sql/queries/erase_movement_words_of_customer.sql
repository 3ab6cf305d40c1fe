-- SPDX-License-Identifier: GPL-3.0-or-later
DELETE FROM movement_words
WHERE movement_id IN (
    SELECT movement.id FROM movement JOIN lot ON lot.id = movement.lot_id WHERE lot.owner_customer_id = :customer)
