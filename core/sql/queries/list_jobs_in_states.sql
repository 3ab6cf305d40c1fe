-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT id, number, state, customer_id, customer_name, phone, frame_name, mark, sport, method, mains_hundredths,
       mains_unit, crosses_hundredths, crosses_unit, whole_code, mains_code, crosses_code, promised_at, logged_at
FROM job_line
WHERE state IN (:state1, :state2, :state3, :state4, :state5, :state6)
ORDER BY promised_at NULLS LAST, number
