-- SPDX-License-Identifier: GPL-3.0-or-later
SELECT consent.id, consent.pull_hundredths, consent.pull_unit, consent.marked_hundredths, consent.marked_unit,
       consent.at, consent.staff_id, consent.station, coalesce(consent_words.agreed_by, '') AS agreed_by,
       coalesce(consent_words.words, '') AS words
FROM consent
LEFT JOIN consent_words ON consent_words.consent_id = consent.id
WHERE consent.job_id = :job
ORDER BY consent.id
