-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a packet of a string holds, where it is sold in packets; each packet on the shelf is a lot of its own.

ALTER TABLE string_article ADD COLUMN packet_mm BIGINT CONSTRAINT string_packet CHECK (packet_mm > 0);
