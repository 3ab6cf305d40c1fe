// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>
#include <vector>

// String that comes in: one parcel of several reels and packets, with one bill and one shipping.
namespace rw::desk {

/// Several lots that are alike: three reels, a box of twelve packets. Each becomes a lot of its own.
struct DeliveryLine {
    StringArticleId article;
    int count = 1; ///< 1 to kMostAlike
    LotKind kind = LotKind::Reel;
    Length nominal;                  ///< of each, 1 m to 1000 m
    Money priceEach;                 ///< nothing or more
    std::string batch{};             ///< at most 80 characters
    std::string tag{};               ///< of a single lot; "": the next of its string
    std::optional<Mass> newWeight{}; ///< of a single reel on its spool, where it was put on the scale
};
constexpr int kMostAlike = 500; ///< a box holds a gross at most; more is a slip of the key

struct ReceiveDelivery {
    std::string requestKey; ///< made once for each sheet; one that is sent twice comes in once
    std::string supplier;   ///< may be empty
    std::vector<DeliveryLine> lines;
    Money shipping; ///< of the whole parcel; the lots share it by their prices
    By by;
};

/// The lots as they came in, in the order of the lines, or those that the same request key brought before. Refusals:
/// Missing {what: delivery} without a line, TooLong (supplier, batch, tag), NotFound, CurrencyMismatch, OutOfRange
/// (count, length), ImpossibleValue (a tag in use, a price below nothing); one that is about a line names it: {line},
/// from 0. ChangedMeanwhile {what: delivery} when the key brought something else.
[[nodiscard]] Result<std::vector<Lot>> receiveDelivery(Transaction& ledger, const ReceiveDelivery& command);

/// The tags that lots of these lines would get now, a list for each line: what to write on the reels.
[[nodiscard]] Result<std::vector<std::vector<std::string>>> tagsFor(Transaction& ledger,
                                                                    const std::vector<DeliveryLine>& lines);

} // namespace rw::desk
