// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/books.h"
#include "core/desk/payment.h"

#include <QLocale>
#include <QString>

#include <cstddef>
#include <cstdint>
#include <vector>

// The owner's books in words.
namespace rw::ui {

/// "not told, 14.00 owed": what is still to be done with a job that is strung; "3.00 too much paid" for a credit,
/// "withdrawn, 14.00 to give back".
[[nodiscard]] QString openMatterText(const desk::OpenMatter& matter, const QLocale& locale = QLocale());
/// "5 rackets, £61.00 owed together", or what an empty list means.
[[nodiscard]] QString openMattersText(const std::vector<desk::OpenMatter>& matters, const QLocale& locale = QLocale());
/// "2121: £10.00 taken, £4.00 is still owed."
[[nodiscard]] QString paymentTakenText(const desk::PaymentTaken& taken, const QLocale& locale = QLocale());
/// "Thursday 12 March 2026", "March 2026".
[[nodiscard]] QString dayText(CivilDate day, const QLocale& locale = QLocale());
[[nodiscard]] QString monthText(CivilDate day, const QLocale& locale = QLocale());
/// "1 job", "12 jobs".
[[nodiscard]] QString strungJobsText(std::size_t jobs);
/// The work in these jobs and what it is worth, and what was left of closed reels: what is shown beside, line by line.
[[nodiscard]] QString earnedBesideText(const desk::Earned& earned, const QLocale& locale = QLocale());
/// What will be written; `withCosts`: what the shop paid too.
[[nodiscard]] QString exportWords(bool withCosts);
/// "10 files with 241 rows are in /home/oriel/books."
[[nodiscard]] QString exportedText(int files, std::int64_t rows, const QString& folder);
/// "today", "1 day", "12 days": how long ago by whole days.
[[nodiscard]] QString ageText(Instant since, Instant now);

} // namespace rw::ui
