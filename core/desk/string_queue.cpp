// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/string_queue.h"

#include "core/desk/reel_choice.h"
#include "core/desk/remnant_value_of.h"

#include <algorithm>
#include <map>

namespace rw::desk {

namespace {
constexpr Length kNothing = Length::fromMillimetres(0);

std::vector<PlannedCut> asPlannedCuts(const std::vector<WaitingCut>& cuts, StringArticleId article) {
    std::vector<PlannedCut> planned;
    for (const WaitingCut& cut : cuts) {
        planned.push_back({cut.piece, article, cut.lot, cut.owner, cut.length});
    }
    return planned;
}

/// Keeps of a question the pieces that have a place in `placing`.
void keepPlaced(StringQueue::Question& question, const stock::Placing& placing) {
    StringQueue::Question kept{question.lots, question.lotIds, {}, {}, {}};
    for (std::size_t i = 0; i < placing.size(); ++i) {
        if (placing[i]) {
            kept.pieces.push_back(question.pieces[i]);
            kept.cuts.push_back(question.cuts[i]);
            kept.asPlanned.push_back(question.asPlanned[i]);
        }
    }
    question = std::move(kept);
}

bool leavesOut(const stock::Placing& placing) {
    return std::ranges::any_of(placing, [](const auto& lot) { return !lot.has_value(); });
}
} // namespace

StringQueue::StringQueue(Transaction& ledger, StringArticleId article, Instant now)
    : m_ledger(ledger)
    , m_article(article)
    , m_now(now)
    , m_cuts(ledger.lots().waitingCuts(article))
    , m_lots(ledger.lots().open(article)) {}

const stock::RemnantValue& StringQueue::value() {
    if (!m_value) {
        m_value = remnantValueOf(m_ledger, m_ledger.strings().get(m_article).value());
    }
    return *m_value;
}

const Lot* StringQueue::openLot(const std::optional<LotId>& id) const {
    const auto lot = std::ranges::find(m_lots, id, &Lot::id);
    return !id || lot == m_lots.end() ? nullptr : &*lot;
}

Length StringQueue::plannedOn(LotId lot, const std::optional<JobId>& butFor) const {
    Length sum = kNothing;
    for (const WaitingCut& cut : m_cuts) {
        sum += cut.lot == lot && cut.job != butFor ? cut.length : kNothing;
    }
    return sum;
}

/// Which cuts stay where they are: the pinned, then what the bench has begun and what is planned on a packet, by
/// promise, while the lot holds them.
std::vector<bool> StringQueue::fixedCuts() const {
    std::vector<bool> fixed(m_cuts.size(), false);
    std::map<LotId, Length> left;
    for (const Lot& lot : m_lots) {
        left.emplace(*lot.id, lot.length);
    }
    for (std::size_t i = 0; i < m_cuts.size(); ++i) {
        if (m_cuts[i].pinned) {
            fixed[i] = true;
            if (openLot(m_cuts[i].lot) != nullptr) {
                left.at(*m_cuts[i].lot) -= m_cuts[i].length;
            }
        }
    }
    for (std::size_t i = 0; i < m_cuts.size(); ++i) {
        const Lot* lot = openLot(m_cuts[i].lot);
        const bool stays = lot != nullptr && (m_cuts[i].begun || lot->kind == LotKind::Packet);
        if (!fixed[i] && stays && m_cuts[i].length <= left.at(*lot->id)) {
            fixed[i] = true;
            left.at(*lot->id) -= m_cuts[i].length;
        }
    }
    return fixed;
}

StringQueue::Question StringQueue::question() const {
    Question question;
    const std::vector<bool> fixed = fixedCuts();
    std::map<LotId, std::size_t> place;
    for (const Lot& lot : m_lots) {
        if (lot.isFullPacket()) {
            continue;
        }
        Length committed = kNothing;
        for (std::size_t i = 0; i < m_cuts.size(); ++i) {
            committed += fixed[i] && m_cuts[i].lot == lot.id ? m_cuts[i].length : kNothing;
        }
        place.emplace(*lot.id, question.lots.size());
        question.lots.push_back({cutSource(lot, committed, m_now), lot.owner, std::nullopt});
        question.lotIds.push_back(*lot.id);
    }
    for (std::size_t i = 0; i < m_cuts.size(); ++i) {
        if (fixed[i]) {
            continue;
        }
        const WaitingCut& cut = m_cuts[i];
        const auto planned = cut.lot ? place.find(*cut.lot) : place.end();
        question.pieces.push_back({cut.length, cut.job, cut.owner});
        question.cuts.push_back(i);
        question.asPlanned.push_back(planned == place.end() ? std::nullopt : std::optional(planned->second));
    }
    return question;
}

std::optional<LotId> StringQueue::lotFor(const std::vector<WaitingCut>& others, Length length,
                                         const std::optional<CustomerId>& owner) {
    const std::vector<PlannedCut> planned = asPlannedCuts(others, m_article);
    if (const auto reel = chooseReel(m_lots, planned, length, owner, value(), m_now)) {
        return reel->lot;
    }
    return proposePacket(m_lots, planned, length, owner);
}

StringQueue::Replanned StringQueue::replanned(std::chrono::milliseconds limit) {
    Question question = this->question();
    const std::vector<std::size_t> movable = question.cuts;
    if (movable.empty()) {
        return {};
    }
    stock::QueuePlan plan =
        stock::planQueue(question.lots, question.pieces, value(), {.limit = limit, .asPlanned = question.asPlanned});
    if (leavesOut(plan.placing)) {
        // Not the most jobs are served then but those that were promised first.
        const auto byPromise =
            stock::planQueue(question.lots, question.pieces, value(),
                             {.limit = std::chrono::milliseconds(0), .asPlanned = question.asPlanned});
        keepPlaced(question, byPromise.placing);
        plan = stock::planQueue(question.lots, question.pieces, value(),
                                {.limit = limit, .asPlanned = question.asPlanned});
    }
    std::vector<WaitingCut> then = m_cuts;
    for (const std::size_t i : movable) {
        then[i].lot.reset();
    }
    for (std::size_t i = 0; i < question.pieces.size(); ++i) {
        const auto lot = plan.placing[i];
        then[question.cuts[i]].lot = lot ? std::optional(question.lotIds[*lot]) : std::nullopt;
    }
    for (const std::size_t i : movable) {
        if (!then[i].lot) {
            then[i].lot = lotFor(then, then[i].length, then[i].owner);
        }
    }
    Replanned replanned{.moved = {}, .proven = plan.proven};
    for (std::size_t i = 0; i < then.size(); ++i) {
        if (then[i].lot != m_cuts[i].lot) {
            replanned.moved.push_back(then[i]);
        }
    }
    return replanned;
}

} // namespace rw::desk
