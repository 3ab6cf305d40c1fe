// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/stock/weighing.h"

#include <optional>
#include <string>
#include <vector>

// A lot on the scale: what it says of the length beside the book, and booking it. Weighing tells whether the book is
// right within a metre, not whether an end does one more cross.
namespace rw::desk {

struct WeighLot {
    std::string tag;             ///< as it stands on the lot; small letters do for capitals
    Mass gross;                  ///< what the scale shows, positive
    std::optional<Mass> step{};  ///< of the scale; nothing: the shop's setting
    std::optional<Mass> empty{}; ///< of the spool alone, where somebody knows it now
    std::optional<Mass> fresh{}; ///< of the reel when it was new, likewise
    std::optional<StockTakeId> stockTake{};
    By by;
};

/// What a difference that is a finding may come from; the shop looks.
enum class WeighCause {
    UnbookedJobs, ///< whole jobs are missing: finding.unbookedJobs
    UnbookedCut,  ///< something is missing that is no whole number of jobs
    CutNotMade,   ///< more is there than the book says: a cut was booked and never made
    NotFull,      ///< it was not as long when new as its label says
    WrongSpool,   ///< the spool's weight is another's, or was read wrong
    WrongReel     ///< the tag is another reel's
};

/// A weighing with what it says.
struct WeighIn {
    KeptWeighing weighing;
    Lot lot;
    StringArticle article;
    std::string owner{};                  ///< the customer's name; "": the shop's
    stock::WeighFinding finding;          ///< against the book as it was then
    std::vector<WeighCause> causes{};     ///< of a finding, the likeliest first; none without one
    std::optional<std::string> spoolOf{}; ///< the tag of another lot, whose spool's weight was taken
    bool isNewWeight = false; ///< nothing was ever cut from it: this is its weight when new, and was kept so
};

/// What that would say, with nothing written. NotFound {lot}, LotClosed; ImpossibleValue {key: packet} for a full
/// packet, which is counted and not weighed; {key: weight} for less than the empty spool, {key: weight when new} for
/// one that is not above it; OutOfRange {weight, scale step} for nothing; Missing {empty spool} when neither the spool
/// nor the new reel was ever weighed, nor a spool like it; ChangedMeanwhile {what: stock-take} when that has ended.
[[nodiscard]] Result<WeighIn> wouldWeigh(Transaction& ledger, const WeighLot& command);

/// The same, kept, with the weights that were told of the spool and of the new reel. The book stays as it is.
[[nodiscard]] Result<WeighIn> weigh(Transaction& ledger, const WeighLot& command);

struct BookWeighing {
    WeighingId weighing;
    By by;
    std::string why{}; ///< in somebody's words; at most 2000 characters
};
/// Books the difference that was weighed as a movement "weighed" beside its weights; what was cut since stays cut. A
/// lot with nothing left is closed; planned cuts that it cannot hold any more are planned elsewhere. NotFound,
/// LotClosed, TooLong {reason}; ChangedMeanwhile {what: lot, lot} when the book was corrected since, or holds less by
/// now than is to come off. Said twice it is said once.
[[nodiscard]] Result<WeighIn> bookWeighing(Transaction& ledger, const BookWeighing& command);

/// A weighing as it was kept, for a list.
[[nodiscard]] Result<WeighIn> keptWeighIn(Transaction& ledger, const KeptWeighing& weighing);

/// What a metre of a string weighs, in grams, with all that was learned.
[[nodiscard]] stock::Estimate gramsPerMetre(Transaction& ledger, const StringArticle& article);

} // namespace rw::desk
