// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/order_drafts.h"

#include <QLocale>
#include <QString>

#include <vector>

// What to order, in words.
namespace rw::ui {

/// "2 reels of 200 m", "6 packets of 12 m"; "1 reel" where nobody knows how long it comes.
[[nodiscard]] QString orderCountText(const desk::OrderLine& line, const QLocale& locale = QLocale());
/// "1 job left, likely out 14 March"; "comes along: likely out 2 April"; "comes early, for free shipping".
[[nodiscard]] QString orderWhyText(const desk::OrderLine& line, const QLocale& locale = QLocale());
/// "Calder & Finch", or that nobody said who sends these.
[[nodiscard]] QString supplierText(const desk::OrderDraft& draft);
/// "£220.00, and shipping, £9.00 the last time"; what is not known is said.
[[nodiscard]] QString orderSumText(const desk::OrderDraft& draft, const QLocale& locale = QLocale());
[[nodiscard]] QString lastShippingText(); ///< beside what the last parcel's shipping was
/// "together"; "together, where it is known"; "nobody knows what it costs": beside the sum.
[[nodiscard]] QString togetherText(const desk::OrderDraft& draft);

/// The drafts for a letter, without prices: a paragraph for each supplier, a line for each string.
[[nodiscard]] QString orderLetterText(const std::vector<desk::OrderDraft>& drafts, const QLocale& locale = QLocale());

[[nodiscard]] QString nothingToOrderText();
[[nodiscard]] QString orderHintText(); ///< that it is a draft, and what the keys do
[[nodiscard]] QString orderCopiedText();
[[nodiscard]] QString orderSavedText(const QString& folder);

} // namespace rw::ui
