// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/weigh_in.h"

#include "core/desk/lookups.h"
#include "core/desk/replan.h"
#include "core/desk/settings.h"
#include "core/desk/usual_job.h"
#include "core/stock/book_uncertainty.h"
#include "core/stock/lot_book.h"
#include "core/stock/metre_weight.h"

#include <algorithm>
#include <cmath>

namespace rw::desk {

namespace {
constexpr Length kNothing = Length::fromMillimetres(0);
constexpr double kFindingSds = 3;
/// Spools of one make differ by about a gram; that is how a scale in steps of four reads (4 / sqrt(12)).
constexpr Mass kOtherSpoolStep = Mass::fromMilligrams(4'000);

stock::Estimate inGrams(const ScaleReading& reading) {
    return {reading.weight.grams(), stock::scaleSdG(reading.step.grams())};
}
std::optional<stock::Estimate> inGrams(const std::optional<ScaleReading>& reading) {
    return reading ? std::optional(inGrams(*reading)) : std::nullopt;
}

/// As it is stored and booked.
stock::Estimate wholeMm(const stock::Estimate& length) { return {std::round(length.value), std::round(length.sd)}; }
stock::Estimate wholeMicrograms(const stock::Estimate& grams) {
    constexpr double kPerGram = 1e6;
    return {std::round(grams.value * kPerGram) / kPerGram, std::round(grams.sd * kPerGram) / kPerGram};
}

Length asLength(double mm) { return Length::fromMillimetres(std::llround(mm)); }

Result<Lot> lotTagged(Transaction& ledger, std::string_view typed) {
    auto tag = wordsOf("tag", typed, kLongestTag);
    if (!tag) {
        return tl::unexpected(tag.error());
    }
    if (auto lot = ledger.lots().byTag(*tag)) {
        return *std::move(lot);
    }
    std::string capitals = *tag;
    std::ranges::transform(capitals, capitals.begin(),
                           [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
    if (auto lot = ledger.lots().byTag(capitals)) {
        return *std::move(lot);
    }
    return refuse(Code::NotFound, {{"what", "lot"}, {"text", *tag}});
}

Result<void> mustBeSomething(std::string_view what, const std::optional<Mass>& mass) {
    if (mass && !mass->isPositive()) {
        return refuse(
            Code::OutOfRange,
            {{"what", std::string(what)}, {"text", mass->text()}, {"lowest", "0.001 g"}, {"highest", "100000 g"}});
    }
    return {};
}

Result<void> mayBeWeighed(Transaction& ledger, const Lot& lot, const WeighLot& command) {
    if (!lot.isOpen()) {
        return refuse(Code::LotClosed, {{"lot", lot.tag}});
    }
    if (lot.isFullPacket()) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "packet"}, {"text", lot.tag}, {"expected", "a reel or an end: packets are counted"}});
    }
    const auto stockTake = command.stockTake ? ledger.weighings().stockTake(*command.stockTake) : std::nullopt;
    if (command.stockTake && (!stockTake || !stockTake->isGoingOn())) {
        return refuse(Code::ChangedMeanwhile, {{"what", "stock-take"}});
    }
    for (const auto& [what, mass] : {std::pair("weight", std::optional(command.gross)),
                                     std::pair("weight", command.fresh), std::pair("scale step", command.step)}) {
        if (auto sound = mustBeSomething(what, mass); !sound) {
            return sound;
        }
    }
    return {};
}

/// How sure the weighings were that were booked and stand.
std::map<MovementId, double> bookedSureness(const std::vector<KeptWeighing>& weighings) {
    std::map<MovementId, double> sdMm;
    for (const KeptWeighing& weighing : weighings) {
        if (weighing.booked) {
            sdMm[*weighing.booked] = weighing.weighedMm.sd;
        }
    }
    return sdMm;
}

/// How long the reel was when new, by what is left of it and what was cut since; nothing while that cannot be told.
std::optional<stock::Estimate> whenNew(const stock::ReelOnScale& reel, const std::vector<Movement>& movements,
                                       Instant received, Instant now) {
    const auto cut = reel.emptyG && reel.newG ? stock::knownCut(movements, received, now) : std::nullopt;
    if (!cut) {
        return std::nullopt;
    }
    const auto length = stock::newLengthFrom({reel.grossG, *reel.emptyG}, {reel.nominalMm, *reel.newG}, *cut);
    return length ? std::optional(wholeMm(*length)) : std::nullopt;
}

/// Whether what the weighing says of the new reel is really another length than its label's: the pull of the label is
/// taken out of both the difference and its uncertainty.
bool wasNotFull(const KeptWeighing& weighing, const Lot& lot) {
    if (!weighing.whenNewMm) {
        return false;
    }
    const auto nominal = static_cast<double>(lot.nominal.millimetres());
    const double labelSd = stock::BookUncertainty::kNewReelShare * nominal;
    const double byWeightSd =
        std::sqrt(std::max(0.0, labelSd * labelSd - weighing.whenNewMm->sd * weighing.whenNewMm->sd));
    return byWeightSd > 0 && std::abs(weighing.whenNewMm->value - nominal) > kFindingSds * byWeightSd;
}

std::vector<WeighCause> causesOf(const stock::WeighFinding& finding, const KeptWeighing& weighing, const Lot& lot) {
    std::vector<WeighCause> causes;
    if (!finding.isFinding) {
        return causes;
    }
    if (finding.unbookedJobs) {
        causes.push_back(WeighCause::UnbookedJobs);
    } else {
        causes.push_back(finding.differenceMm < 0 ? WeighCause::UnbookedCut : WeighCause::CutNotMade);
    }
    if (wasNotFull(weighing, lot)) {
        causes.push_back(WeighCause::NotFull);
    }
    causes.push_back(WeighCause::WrongSpool);
    causes.push_back(WeighCause::WrongReel);
    return causes;
}

/// What is said about a weighing, from what was kept of it.
WeighIn told(Transaction& ledger, const KeptWeighing& weighing, Lot lot, StringArticle article) {
    const Length perJob = usualJob(ledger, article, readSettings(ledger.shop()));
    const auto owner = lot.owner ? ledger.customers().get(*lot.owner) : std::nullopt;
    WeighIn in{.weighing = weighing,
               .lot = std::move(lot),
               .article = std::move(article),
               .owner = owner ? owner->name : std::string(),
               .finding = stock::compareWithBook(weighing.weighedMm, weighing.bookMm, perJob)};
    in.causes = causesOf(in.finding, weighing, in.lot);
    in.isNewWeight = weighing.fresh == weighing.gross && weighing.basis != stock::WeighBasis::AgainstNew;
    return in;
}

/// A reel that nothing was ever cut from weighs what it weighs new, unless the scale says that something is gone.
bool isNewWeight(const Lot& lot, const SpoolWeights& known, const stock::ReelOnScale& reel,
                 const stock::Estimate& bookMm, Length perJob) {
    if (lot.kind != LotKind::Reel || !lot.sealed || known.fresh) {
        return false;
    }
    const auto byMetre = reel.emptyG ? stock::weighedLength(reel) : tl::unexpected(Refusal(Code::Missing));
    return !reel.emptyG || (byMetre && !stock::compareWithBook(byMetre->lengthMm, bookMm, perJob).isFinding);
}

/// What is known of the lot's spool and of the new reel now, with what the command tells.
struct Known {
    SpoolWeights weights;
    std::optional<std::string> spoolOf;
};
Known knownOf(Transaction& ledger, const Lot& lot, const WeighLot& command, Mass step) {
    Known known{ledger.weighings().spoolWeights(*lot.id), std::nullopt};
    SpoolWeights& weights = known.weights;
    if (command.empty) {
        weights.empty = ScaleReading{*command.empty, step};
    }
    if (command.fresh) {
        weights.fresh = ScaleReading{*command.fresh, step};
    }
    if (!weights.empty && lot.kind == LotKind::Packet) {
        weights.empty = ScaleReading{Mass::fromMilligrams(0), step}; // a coil lies on no spool
    }
    if (!weights.empty && lot.kind == LotKind::Reel) {
        if (const auto other = ledger.weighings().spoolLike(*lot.id)) {
            weights.empty = ScaleReading{other->empty.weight, std::max(other->empty.step, kOtherSpoolStep)};
            known.spoolOf = ledger.lots().get(other->lot)->tag;
        }
    }
    return known;
}
} // namespace

stock::Estimate gramsPerMetre(Transaction& ledger, const StringArticle& article) {
    std::map<LotId, stock::ScaleLife> lives;
    for (const Weighings::LotReading& reading : ledger.weighings().readingsOf(*article.id)) {
        lives[reading.lot].moments.push_back({inGrams(reading.gross), reading.at});
    }
    std::vector<stock::ScaleLife> reels;
    for (auto& [lot, life] : lives) {
        life.movements = ledger.lots().movements(lot);
        reels.push_back(std::move(life));
    }
    return stock::learnedFrom(stock::usualGramsPerMetre(article), reels);
}

Result<WeighIn> wouldWeigh(Transaction& ledger, const WeighLot& command) {
    auto lot = lotTagged(ledger, command.tag);
    if (!lot) {
        return tl::unexpected(lot.error());
    }
    if (const auto may = mayBeWeighed(ledger, *lot, command); !may) {
        return tl::unexpected(may.error());
    }
    auto article = articleOf(ledger, lot->article);
    if (!article) {
        return tl::unexpected(article.error());
    }
    const ShopSettings settings = readSettings(ledger.shop());
    const ScaleReading gross{command.gross, command.step.value_or(settings.scaleStep)};
    Known known = knownOf(ledger, *lot, command, gross.step);
    const std::vector<Movement> movements = ledger.lots().movements(*lot->id);
    const auto nominal = static_cast<double>(lot->nominal.millimetres());
    stock::ReelOnScale reel{.grossG = inGrams(gross),
                            .emptyG = inGrams(known.weights.empty),
                            .newG = inGrams(known.weights.fresh),
                            .nominalMm = {nominal, stock::BookUncertainty::kNewReelShare * nominal},
                            .gramsPerMetre = wholeMicrograms(gramsPerMetre(ledger, *article))};
    const stock::Estimate book =
        wholeMm(stock::bookEstimate(movements, bookedSureness(ledger.weighings().ofLot(*lot->id))));
    const bool isNew = isNewWeight(*lot, known.weights, reel, book, usualJob(ledger, *article, settings));
    if (isNew) {
        known.weights.fresh = gross;
        reel.newG = reel.emptyG ? std::nullopt : inGrams(known.weights.fresh); // against itself it is always full
    }
    const auto weighed = stock::weighedLength(reel);
    if (!weighed) {
        return tl::unexpected(weighed.error());
    }
    const KeptWeighing weighing{.id = std::nullopt,
                                .lot = *lot->id,
                                .stockTake = command.stockTake,
                                .gross = gross,
                                .empty = known.weights.empty,
                                .fresh = known.weights.fresh,
                                .gramsPerMetre = reel.gramsPerMetre,
                                .basis = weighed->basis,
                                .weighedMm = wholeMm(weighed->lengthMm),
                                .bookMm = book,
                                .whenNewMm =
                                    isNew ? std::nullopt : whenNew(reel, movements, lot->received, command.by.at),
                                .by = command.by};
    WeighIn in = told(ledger, weighing, *std::move(lot), *std::move(article));
    in.spoolOf = known.spoolOf;
    return in;
}

Result<WeighIn> weigh(Transaction& ledger, const WeighLot& command) {
    auto in = wouldWeigh(ledger, command);
    if (!in) {
        return in;
    }
    const LotId lot = *in->lot.id;
    const Mass step = in->weighing.gross.step;
    if (command.empty) {
        ledger.weighings().setSpoolWeight(lot, SpoolWeight::Empty, {*command.empty, step}, command.by);
    }
    if (command.fresh) {
        ledger.weighings().setSpoolWeight(lot, SpoolWeight::New, {*command.fresh, step}, command.by);
    } else if (in->isNewWeight && !ledger.weighings().spoolWeights(lot).fresh) {
        ledger.weighings().setSpoolWeight(lot, SpoolWeight::New, in->weighing.gross, command.by);
    }
    in->weighing.id = ledger.weighings().add(in->weighing);
    return in;
}

Result<WeighIn> keptWeighIn(Transaction& ledger, const KeptWeighing& weighing) {
    auto lot = lotOf(ledger, weighing.lot);
    auto article = lot ? articleOf(ledger, lot->article) : tl::unexpected(lot.error());
    if (!article) {
        return tl::unexpected(article.error());
    }
    return told(ledger, weighing, *std::move(lot), *std::move(article));
}

Result<WeighIn> bookWeighing(Transaction& ledger, const BookWeighing& command) {
    const auto weighing = ledger.weighings().get(command.weighing);
    if (!weighing) {
        return refuse(Code::NotFound, {{"what", "weighing"}});
    }
    if (weighing->booked) {
        return keptWeighIn(ledger, *weighing);
    }
    const auto lot = lotOf(ledger, weighing->lot);
    auto why = maybeWordsOf("reason", command.why, kLongestNote);
    if (!lot || !why) {
        return tl::unexpected(lot ? why.error() : lot.error());
    }
    if (!lot->isOpen()) {
        return refuse(Code::LotClosed, {{"lot", lot->tag}});
    }
    const Length change = asLength(weighing->weighedMm.value - weighing->bookMm.value);
    const bool corrected =
        std::ranges::any_of(stock::standing(ledger.lots().movements(weighing->lot)), [&](const Movement& movement) {
            return movement.by.at > weighing->by.at &&
                   (movement.reason == MovementReason::Measured || movement.reason == MovementReason::Weighed);
        });
    if (corrected || (lot->length + change).isNegative()) {
        return refuse(Code::ChangedMeanwhile, {{"what", "lot"}, {"lot", lot->tag}});
    }
    const MovementId movement = ledger.lots().move({.id = std::nullopt,
                                                    .lot = weighing->lot,
                                                    .reason = MovementReason::Weighed,
                                                    .change = change,
                                                    .attempt = std::nullopt,
                                                    .lostReason = std::nullopt,
                                                    .corrects = std::nullopt,
                                                    .by = command.by,
                                                    .words = *std::move(why)});
    ledger.weighings().book(command.weighing, movement);
    if (lot->length + change == kNothing) {
        ledger.lots().close(weighing->lot, command.by.at);
    }
    replanString(ledger, lot->article, command.by.at);
    return keptWeighIn(ledger, *ledger.weighings().get(command.weighing));
}

} // namespace rw::desk
