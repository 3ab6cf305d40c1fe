// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger_table.h"
#include "core/desk/stockroom.h"
#include "core/stock/order_draft.h"

#include <optional>
#include <string>
#include <vector>

// What to order, and from whom. A draft: nothing is ordered by itself.
namespace rw::desk {

struct OrderLine {
    StringArticle article;
    LotKind kind = LotKind::Reel; ///< as it came the last time; a reel when it never came
    std::optional<Length> each;   ///< of one; nothing: it never came
    int count = 1;
    stock::DraftLine::Because because = stock::DraftLine::Because::RunningShort;
    std::optional<Money> priceEach; ///< what was paid the last time; nothing: not known
    StringAhead ahead;

    [[nodiscard]] std::optional<Money> price() const;
};

/// One parcel from one supplier: all that runs short there, and what comes along because it will soon.
struct OrderDraft {
    std::string supplier; ///< "": strings of which nobody knows who sends them
    std::vector<OrderLine> lines;
    std::optional<Money> shipping; ///< of that supplier's last parcel

    /// Of the lines whose price is known.
    [[nodiscard]] std::optional<Money> goods() const;
    [[nodiscard]] bool isPriced() const;                 ///< every line is
    [[nodiscard]] std::optional<Money> together() const; ///< with the shipping, where that is known
};

/// A draft for each supplier where something runs short, by name, the unknown one last: who sent a string's newest lot
/// is its supplier. How many of each by stock::reelsPerOrder(), with that lot's share of the shipping and its price;
/// one where the price is not known. What is on request is not ordered, what is retired neither.
[[nodiscard]] Result<std::vector<OrderDraft>> orderDrafts(Transaction& ledger, Instant now);

/// The drafts line by line, for a spreadsheet: "order". What is paid is for the owner alone.
[[nodiscard]] LedgerTable orderTable(const std::vector<OrderDraft>& drafts);

/// "running-short", "due-soon", "fills-free-shipping".
[[nodiscard]] std::string_view becauseText(stock::DraftLine::Because because);

} // namespace rw::desk
