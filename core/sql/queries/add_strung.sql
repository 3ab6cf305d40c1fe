-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO strung (
    job_event_id, job_id, mains_hundredths, mains_unit, crosses_hundredths, crosses_unit, machine_id)
VALUES (
    :event, :job, :mains_hundredths, :mains_unit, :crosses_hundredths, :crosses_unit, :machine)
