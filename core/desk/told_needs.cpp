// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/told_needs.h"

#include "core/desk/intake_plan.h"
#include "core/length/cut_plan.h"

#include <algorithm>
#include <deque>
#include <map>

namespace rw::desk {

namespace {
using length::FinishedPiece;
using length::PredictedPart;

double asMm(Length length) { return static_cast<double>(length.millimetres()); }

/// What was noted of a piece, or of the short side of one; nothing where nobody can know how it ended.
std::optional<FinishedPiece> finishedPiece(const OwnCut& cut, bool shortSide) {
    if (shortSide && (!cut.shortSide || cut.cameShort)) {
        return std::nullopt;
    }
    const Length length = shortSide ? *cut.shortSide : cut.length;
    const auto& tails = shortSide ? cut.shortSideTails : cut.tails;
    FinishedPiece piece{.role = cut.role, .shortSide = shortSide, .cutMm = asMm(length), .reelEnd = cut.allThereWas};
    if (cut.cameShort) {
        piece.outcome = FinishedPiece::Outcome::Short;
    } else if (tails) {
        piece.outcome = FinishedPiece::Outcome::Tails;
        piece.tailsLowMm = asMm(std::min(tails->low, length));
        piece.tailsHighMm = asMm(std::min(tails->high, length));
    }
    return piece;
}

/// Predicts what jobs of the past needed; each kind of job once.
class Predictions {
public:
    Predictions(Transaction& ledger, const std::vector<StringArticle>& articles, const ShopSettings& settings)
        : m_ledger(ledger)
        , m_articles(articles)
        , m_settings(settings) {}

    /// The string of a half of the bed; nothing when it is not known any more.
    [[nodiscard]] const StringArticle* article(StringArticleId id) const {
        const auto found = std::ranges::find(m_articles, std::optional(id), &StringArticle::id);
        return found == m_articles.end() ? nullptr : &*found;
    }

    /// The parts of the job that the cut was made for; none when it cannot be laid.
    const std::vector<PredictedPart>& partsOf(const OwnCut& cut) {
        const auto same = std::ranges::find_if(m_laid, [&](const Laid& laid) {
            const OwnCut& other = *laid.cut;
            return other.frame == cut.frame && other.mains == cut.mains && other.crosses == cut.crosses &&
                   other.pulled == cut.pulled && other.method == cut.method && other.route == cut.route;
        });
        return same != m_laid.end() ? same->parts : m_laid.emplace_back(Laid{&cut, lay(cut)}).parts;
    }

private:
    struct Laid {
        const OwnCut* cut;
        std::vector<PredictedPart> parts;
    };

    std::vector<PredictedPart> lay(const OwnCut& cut) {
        const auto [found, isNew] = m_frames.try_emplace(cut.frame);
        if (isNew) {
            found->second = m_ledger.frames().get(cut.frame);
        }
        const StringArticle* mains = article(cut.mains);
        const StringArticle* crosses = article(cut.crosses);
        if (!found->second || mains == nullptr || crosses == nullptr) {
            return {};
        }
        length::CutRequest request = requestFor(*found->second, *mains, *crosses, cut.pulled, m_settings);
        request.method = cut.method;
        if (!cut.route.empty()) {
            request.route = cut.route;
        }
        return length::predictParts(request).value_or(std::vector<PredictedPart>());
    }

    Transaction& m_ledger;
    const std::vector<StringArticle>& m_articles;
    const ShopSettings& m_settings;
    std::map<FrameModelId, std::optional<FrameModel>> m_frames;
    std::deque<Laid> m_laid; // what was given out stays where it is
};

std::optional<ToldNeed> toldOf(const OwnCut& cut, const PredictedPart& part, Material material) {
    const auto piece = finishedPiece(cut, part.shortSide);
    if (!piece) {
        return std::nullopt;
    }
    const auto seen = length::observationOf(*piece, part.needMm, part.backMm, "cut");
    if (!seen) {
        return std::nullopt;
    }
    return ToldNeed{.group = {.frame = cut.frame,
                              .role = part.role,
                              .shortSide = part.shortSide,
                              .material = material,
                              .route = part.shortSide ? cut.route : std::string()},
                    .job = cut.job,
                    .number = cut.number,
                    .at = cut.at,
                    .cut = part.shortSide ? *cut.shortSide : cut.length,
                    .predictedMm = part.needMm,
                    .materialSpread = part.materialSpread,
                    .seen = *seen};
}
} // namespace

std::vector<ToldNeed> toldBy(Transaction& ledger, const std::vector<OwnCut>& cuts,
                             const std::vector<StringArticle>& articles, const ShopSettings& settings) {
    Predictions predictions(ledger, articles, settings);
    std::vector<ToldNeed> told;
    for (const OwnCut& cut : cuts) {
        const StringArticle* article = predictions.article(cut.role == PieceRole::Crosses ? cut.crosses : cut.mains);
        for (const PredictedPart& part : predictions.partsOf(cut)) {
            if (part.role != cut.role) {
                continue;
            }
            if (auto need = toldOf(cut, part, article->material)) {
                told.push_back(*std::move(need));
            }
        }
    }
    return told;
}

std::vector<ToldNeed> toldFor(Transaction& ledger, const FrameModel& frame, const std::vector<StringArticle>& articles,
                              const ShopSettings& settings) {
    return toldBy(ledger, ledger.ownCuts().cuts(*frame.id, frame.sport, kJobsOfFrameTold, kPiecesElsewhereTold),
                  articles, settings);
}

length::Learnt learntOf(std::span<const ToldNeed> told, const NeedGroup& group) {
    length::Learnt learnt;
    std::vector<NeedGroup> others;
    std::vector<std::vector<length::Observation>> seenByOthers;
    for (const ToldNeed& need : told) {
        if (need.group == group) {
            learnt.seen.push_back(need.seen);
        } else if (need.group.isSamePart(group) && need.seen.isExact()) {
            const auto other = std::ranges::find(others, need.group);
            const auto place = static_cast<std::size_t>(other - others.begin());
            if (other == others.end()) {
                others.push_back(need.group);
                seenByOthers.emplace_back();
            }
            seenByOthers[place].push_back(need.seen);
            ++learnt.shopCuts;
        }
    }
    const std::vector<std::span<const length::Observation>> groups(seenByOthers.begin(), seenByOthers.end());
    learnt.shopBias = length::shopBias(groups);
    return learnt;
}

length::Experience experienceFor(std::span<const ToldNeed> told, FrameModelId frame, Material mains, Material crosses,
                                 std::string_view route) {
    const auto learnt = [&](PieceRole role, bool shortSide, Material material) {
        return learntOf(told, {frame, role, shortSide, material, shortSide ? std::string(route) : std::string()});
    };
    return {.mains = learnt(PieceRole::Mains, false, mains),
            .crosses = learnt(PieceRole::Crosses, false, crosses),
            .whole = learnt(PieceRole::Whole, false, mains),
            .shortSide = learnt(PieceRole::Whole, true, mains)};
}

} // namespace rw::desk
