-- SPDX-License-Identifier: GPL-3.0-or-later
INSERT INTO inspection (job_id, came_with, remarks)
VALUES (:job, :came_with, :remarks)
