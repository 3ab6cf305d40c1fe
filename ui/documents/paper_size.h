// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPageLayout>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <array>

namespace rw::ui {

/// What slips are printed on: sheets of ISO 216, of which the smaller ones lie across where that is what a tag or a
/// card wants, and pieces off a roll of labels 62 mm wide, a long one for a tag (read along the roll) and a short one.
enum class PaperSize { A4, A5Landscape, A6, A7Landscape, RollLong, RollShort };
inline constexpr std::array kPaperSizes = {PaperSize::A4,          PaperSize::A5Landscape, PaperSize::A6,
                                           PaperSize::A7Landscape, PaperSize::RollLong,    PaperSize::RollShort};

[[nodiscard]] QString paperSizeWord(PaperSize size); ///< "A4", "A5 across", "roll 62 mm, 90 mm long"
/// What is kept in settings: "a4". paperSizeFromCode gives `otherwise` for anything else.
[[nodiscard]] QString paperSizeCode(PaperSize size);
[[nodiscard]] PaperSize paperSizeFromCode(const QString& code, PaperSize otherwise);

/// The page as a printer or a PDF takes it, with margins that every printer can keep.
[[nodiscard]] QPageLayout pageLayout(PaperSize size);
[[nodiscard]] QSizeF printableMillimetres(PaperSize size);

} // namespace rw::ui
