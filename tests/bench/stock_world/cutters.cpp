// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stock_world/cutters.h"

#include <algorithm>

namespace rw::world {

namespace {
using stock::CutSource;

class OneReelAtATime final : public Cutter {
public:
    std::optional<std::size_t> choose(std::span<const CutSource> lots, Length piece) override {
        return !lots.empty() && lots.front().fits(piece) ? std::optional<std::size_t>(0) : std::nullopt;
    }
    [[nodiscard]] bool throwsTheRestAway() const override { return true; }
};

class BestFit final : public Cutter {
public:
    std::optional<std::size_t> choose(std::span<const CutSource> lots, Length piece) override {
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < lots.size(); ++i) {
            if (lots[i].fits(piece) && (!best || lots[i].length < lots[*best].length)) {
                best = i;
            }
        }
        return best;
    }
};

class RemnantRule : public Cutter {
public:
    RemnantRule(const stock::PieceMix& mix, Length shortestUseful)
        : m_value(mix, shortestUseful) {}

    std::optional<std::size_t> choose(std::span<const CutSource> lots, Length piece) override {
        std::vector<CutSource> all(lots.begin(), lots.end());
        all.push_back({.length = Length::fromMillimetres(200'000), .sealed = true});
        const auto cut = stock::nextCut(all, piece, m_value);
        const std::size_t lot = cut->opens.value_or(cut->lot);
        return lot < lots.size() ? std::optional(lot) : std::nullopt;
    }

protected:
    void relearn(const stock::PieceMix& mix) { m_value = stock::RemnantValue(mix, m_value.shortestUseful()); }

private:
    stock::RemnantValue m_value;
};

class LearningRule final : public RemnantRule {
public:
    explicit LearningRule(const FirstDay& firstDay)
        : RemnantRule(stock::mixOfFirstDay(firstDay.expectedCuts), firstDay.shortestUseful)
        , m_ofTheSport(stock::mixOfFirstDay(firstDay.expectedCuts)) {}

    void saw(Length piece) override {
        constexpr std::size_t kRelearnEvery = 50;
        m_seen.push_back(piece);
        if (m_seen.size() % kRelearnEvery == 0) {
            relearn(stock::mixOfString(m_seen, m_ofTheSport));
        }
    }

private:
    stock::PieceMix m_ofTheSport;
    std::vector<Length> m_seen;
};
} // namespace

std::unique_ptr<Cutter> oneReelAtATime() { return std::make_unique<OneReelAtATime>(); }
std::unique_ptr<Cutter> bestFit() { return std::make_unique<BestFit>(); }
std::unique_ptr<Cutter> remnantRule(const FirstDay& firstDay) { return std::make_unique<LearningRule>(firstDay); }
std::unique_ptr<Cutter> remnantRule(const stock::PieceMix& mix, Length shortestUseful) {
    return std::make_unique<RemnantRule>(mix, shortestUseful);
}

} // namespace rw::world
