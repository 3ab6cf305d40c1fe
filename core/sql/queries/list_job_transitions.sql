-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT from_state, kind, to_state
FROM job_transition
ORDER BY from_state, kind
