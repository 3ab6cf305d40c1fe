// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/delivery.h"
#include "core/desk/lot_care.h"
#include "core/desk/port/ledger.h"
#include "core/desk/string_ahead.h"
#include "core/stock/shelf.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

// What is on the shelf, and a lot's life.
namespace rw::desk {

/// A lot on the shelf, or a pile of full packets that are alike: one of them stands for all, a free one where there is.
struct ShelfLot {
    Lot lot;
    Length promised; ///< planned on this very lot, or on the pile together
    WholeJobs whole; ///< of the string's usual job, in what of it is free; a free packet is one job
    int packets = 0; ///< how many lie in the pile; 0: this is no packet, or an opened one
    [[nodiscard]] Length held() const { return packets > 0 ? lot.length * packets : lot.length; }
    [[nodiscard]] std::int64_t freePackets() const { return packets > 0 ? whole.jobs : 0; }
};

struct ShelfString {
    StringArticle article;
    std::vector<ShelfLot> lots; ///< open ones; full packets alike lie in a pile
    Holding holding;
    Length perJob;              ///< what a whole job usually takes: the mean of its last twenty, else the usual plan
    std::int64_t wholeJobsFree; ///< over the lots, each on its own; negative when more is promised than is there
    std::string owner{};        ///< the customer's name; "": the shop's
    /// What planning and ordering may count on: of each lot what is free, less what will likely be scrap of that.
    Length usable = Length::fromMillimetres(0);
    std::optional<StringAhead> ahead{}; ///< what will become of it; shelfAhead() alone tells
    [[nodiscard]] bool runningShort() const { return ahead && ahead->runningShort; }
};
/// The shop's own string, by code, as it lies there; shelfAhead() says what will become of it.
[[nodiscard]] Result<std::vector<ShelfString>> shelf(Transaction& ledger);

/// What is kept here for customers, each string of each owner on a board of its own, by owner, then code. Nothing of it
/// runs short: it is theirs.
[[nodiscard]] Result<std::vector<ShelfString>> keptForCustomers(Transaction& ledger);

struct ReceiveLot {
    std::string tag; ///< "": the one after the highest of the string's open lots, "K-5"
    StringArticleId article;
    LotKind kind = LotKind::Reel;
    std::optional<CustomerId> owner;
    Length nominal;
    Money price;
    Money shipping;
    std::string batch;
    By by;
    std::string requestKey = {};     ///< made once per delivery, so that one that is sent twice comes in once; "": none
    std::optional<Mass> newWeight{}; ///< of the reel on its spool, where it was put on the scale
};
/// The lot as it came in, or the one that the same request key brought before. NotFound, TooLong, OutOfRange (a nominal
/// length outside 1 m to 1000 m), CurrencyMismatch, ImpossibleValue (a tag in use, a price below nothing, a packet's
/// weight).
[[nodiscard]] Result<Lot> receiveLot(Transaction& ledger, const ReceiveLot& command);

/// A lot that is on the shelf no more.
struct ClosedLot {
    Lot lot;
    MovementReason how; ///< of its last movement: cut to its end, thrown away, given back, measured to be nothing
    std::string owner;  ///< the customer's name; "": the shop's
};
/// Of one string, the one closed last first; the shop's and what was kept for customers. NotFound.
[[nodiscard]] Result<std::vector<ClosedLot>> closedLots(Transaction& ledger, StringArticleId article);

struct LotLife {
    Lot lot;
    StringArticle article;
    std::vector<Movement> movements;
    std::vector<std::int64_t> jobNumbers; ///< of each movement, 0 where no job stands behind it
    std::optional<Delivery> delivery{};   ///< with which it came, where that was kept
    std::string owner{};                  ///< the customer's name; "": the shop's
    std::map<MovementId, Mass> onScale{}; ///< what stood on the scale, of each movement "weighed" that stands
};
[[nodiscard]] Result<LotLife> lotLife(Transaction& ledger, LotId lot);

} // namespace rw::desk
