// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/job_paper.h"
#include "ui/documents/job_card.h"
#include "ui/documents/pdf_page.h"

#include <QString>

#include <array>

namespace rw::ui {

/// The papers of a job: what hangs on the racket, what its owner takes home, what lies at the machine, what stays on
/// the frame, and what hangs beside the tag once it is strung.
enum class Slip { Tag, Ticket, JobCard, FrameLabel, Ready };
inline constexpr std::array kSlips = {Slip::Tag, Slip::Ticket, Slip::JobCard, Slip::FrameLabel, Slip::Ready};

[[nodiscard]] QString slipWord(Slip slip); ///< "tag", "ticket", "job card", "frame label", "ready slip"
[[nodiscard]] QString slipCode(Slip slip); ///< for settings and file names: "tag", "ticket", "card", "label", "ready"
[[nodiscard]] PaperSize usualPaper(Slip slip); ///< A7 across, A6, A4, a short piece of the roll, A7 across
[[nodiscard]] QString slipTitle(Slip slip, std::int64_t number); ///< "Tag 2121"

/// The frame label and the ready slip say how a racket was strung: WrongState {job, state, wanted} before it was.
[[nodiscard]] Result<void> canBePrinted(Slip slip, const Job& job);

/// Paints the slip on the printable part of a sheet of `size`. The card fills its sheet; the others keep their size on
/// larger paper, with a line to cut along, and shrink to fit a smaller one. Precondition: it can be printed.
void paintSlip(QPainter& painter, const QRectF& area, PaperSize size, Slip slip, const desk::JobPaper& paper,
               const JobCardStyle& style = {});

/// One page, as writePdfPage writes it; what canBePrinted refuses.
[[nodiscard]] Result<void> writeSlipPdf(const QString& path, Slip slip, const desk::JobPaper& paper, PaperSize size,
                                        const JobCardStyle& style = {});

} // namespace rw::ui
