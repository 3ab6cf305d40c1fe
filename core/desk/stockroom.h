// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/stock/shelf.h"

#include <optional>
#include <string>
#include <vector>

// What is on the shelf, receiving, correcting.
namespace rw::desk {

struct ShelfLot {
    Lot lot;
    Length promised; ///< planned on this very lot
    WholeJobs whole; ///< of the string's usual job, in what of it is free
};

struct ShelfString {
    StringArticle article;
    std::vector<ShelfLot> lots; ///< the shop's open ones
    Holding holding;
    Length perJob;              ///< what a whole job usually takes: the mean of its last twenty, else the usual plan
    std::int64_t wholeJobsFree; ///< over the lots, each on its own; negative when more is promised than is there
    bool runningShort;          ///< fewer of them than the shop wants (setting, default 2)
};
[[nodiscard]] Result<std::vector<ShelfString>> shelf(Transaction& ledger);

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
    std::string requestKey = {}; ///< made once per delivery, so that one that is sent twice comes in once; "": none
};
/// The lot as it came in, or the one that the same request key brought before. NotFound, TooLong, OutOfRange (a nominal
/// length outside 1 m to 1000 m), CurrencyMismatch, ImpossibleValue (a tag in use, a price below nothing).
[[nodiscard]] Result<Lot> receiveLot(Transaction& ledger, const ReceiveLot& command);

struct CorrectLot {
    LotId lot;
    Length measured; ///< what is really there, >= 0
    By by;
};
/// Books the difference as a movement "measured"; zero is a correction too: it says that the book was right. A lot with
/// nothing left is closed; planned cuts that it cannot hold any more are planned elsewhere. LotClosed, OutOfRange.
[[nodiscard]] Result<Lot> correctLot(Transaction& ledger, const CorrectLot& command);

struct LotLife {
    Lot lot;
    StringArticle article;
    std::vector<Movement> movements;
    std::vector<std::int64_t> jobNumbers; ///< of each movement, 0 where no job stands behind it
};
[[nodiscard]] Result<LotLife> lotLife(Transaction& ledger, LotId lot);

} // namespace rw::desk
