// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/job_paper.h"
#include "ui/documents/job_card.h"
#include "ui/documents/pdf_page.h"

#include <QString>

#include <array>

namespace rw::ui {

/// The papers of a job: what hangs on the racket, what its owner takes home, what lies at the machine.
enum class Slip { Tag, Ticket, JobCard };
inline constexpr std::array kSlips = {Slip::Tag, Slip::Ticket, Slip::JobCard};

[[nodiscard]] QString slipWord(Slip slip);     ///< "tag", "ticket", "job card"
[[nodiscard]] QString slipCode(Slip slip);     ///< for settings and file names: "tag", "ticket", "card"
[[nodiscard]] PaperSize usualPaper(Slip slip); ///< A7 across, A6, A4
[[nodiscard]] QString slipTitle(Slip slip, std::int64_t number); ///< "Tag 2121"

/// Paints the slip on the printable part of a sheet of `size`. The tag and the ticket keep their size on larger paper,
/// with a line to cut along, and shrink to fit a smaller one; the card fills its sheet.
void paintSlip(QPainter& painter, const QRectF& area, PaperSize size, Slip slip, const desk::JobPaper& paper,
               const JobCardStyle& style = {});

/// One page, as writePdfPage writes it.
[[nodiscard]] Result<void> writeSlipPdf(const QString& path, Slip slip, const desk::JobPaper& paper, PaperSize size,
                                        const JobCardStyle& style = {});

} // namespace rw::ui
