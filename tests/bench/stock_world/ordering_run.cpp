// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stock_world/ordering_run.h"

#include "core/stock/next_cut.h"
#include "core/stock/order_draft.h"
#include "core/stock/order_point.h"
#include "core/stock/order_quantity.h"
#include "tests/bench/stock_world/ordering_world.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rw::world {

namespace {
constexpr Length kReel = Length::fromMillimetres(200'000);
constexpr Length kJob = Length::fromMillimetres(11'000);
constexpr double kJobsPerReel = 18;
constexpr int kWarmUpDays = 2 * 365;
constexpr int kDays = 7 * 365;
constexpr int kLookBackEvery = 30;

// What the shop pays. Only the sizes of orders hang on it.
const Money kReelPrice = Money::fromMinor(8'400, Currency::pounds());
const Money kShipping = Money::fromMinor(800, Currency::pounds());

/// Jobs of 11 m, and halves of them.
const stock::RemnantValue& value() {
    static const stock::RemnantValue kValue(stock::PieceMix::of({{kJob, 0.8}, {Length::fromMillimetres(5'500), 0.2}}),
                                            Length::fromMillimetres(5'500));
    return kValue;
}

/// One string on the shelf and what the shop knows of it.
struct Kept {
    std::vector<stock::CutSource> lots{{.length = kReel, .sealed = true}};
    int reelsOnTheWay = 0;
    std::vector<double> asked; ///< jobs of each day, with those that found nothing
    stock::Demand demand = stock::Demand::likeOthers(0.1);

    [[nodiscard]] bool take(double jobs) {
        const Length piece = Length::fromMillimetres(std::llround(static_cast<double>(kJob.millimetres()) * jobs));
        const auto cut = stock::nextCut(lots, piece, value());
        if (!cut) {
            return false;
        }
        stock::CutSource& lot = lots[cut->opens.value_or(cut->lot)];
        lot.length -= piece;
        lot.sealed = false;
        std::erase_if(lots, [](const stock::CutSource& each) { return each.length < value().shortestUseful(); });
        return true;
    }

    [[nodiscard]] std::vector<Length> lengths() const {
        std::vector<Length> all;
        for (const stock::CutSource& lot : lots) {
            all.push_back(lot.length);
        }
        return all;
    }

    [[nodiscard]] double wholeJobs() const {
        return std::accumulate(lots.begin(), lots.end(), kJobsPerReel * reelsOnTheWay,
                               [](double sum, const stock::CutSource& lot) {
                                   return sum + static_cast<double>(lot.length.wholeTimes(kJob));
                               });
    }

    [[nodiscard]] double positionJobs() const {
        return stock::usableMm(lengths(), value()) / static_cast<double>(kJob.millimetres()) +
               kJobsPerReel * reelsOnTheWay;
    }
};

struct Parcel {
    int arrives;
    int days; ///< how long it took
    std::vector<int> reels = std::vector<int>(kStrings, 0);
};

class Run {
public:
    Run(OrderRule rule, double jobsPerMonth, std::uint64_t seed)
        : m_rule(rule)
        , m_world(jobsPerMonth, seed)
        , m_kept(kStrings) {}

    OrderingResult result() {
        for (m_day = 0; m_day < kDays; ++m_day) {
            receive();
            serve();
            if (m_day % kLookBackEvery == 0) {
                lookBack();
            }
            order();
            if (m_day >= kWarmUpDays) {
                m_result.stockMetres += metresOnTheShelf() / (kDays - kWarmUpDays);
            }
        }
        return m_result;
    }

private:
    void receive() {
        for (const Parcel& parcel : m_parcels) {
            if (parcel.arrives != m_day) {
                continue;
            }
            m_leadDays.push_back(parcel.days);
            for (std::size_t i = 0; i < kStrings; ++i) {
                m_kept[i].reelsOnTheWay -= parcel.reels[i];
                for (int reel = 0; reel < parcel.reels[i]; ++reel) {
                    m_kept[i].lots.push_back(
                        {.length = kReel, .sealed = true, .received = Instant(std::chrono::days(m_day))});
                }
            }
        }
        std::erase_if(m_parcels, [this](const Parcel& parcel) { return parcel.arrives <= m_day; });
    }

    void serve() {
        std::vector<double> asked(kStrings, 0);
        for (const Arrival& arrival : m_world.nextDay()) {
            for (const double jobs : arrival.jobs) {
                asked[arrival.string] += jobs;
                const bool found = m_kept[arrival.string].take(jobs);
                if (m_day >= kWarmUpDays) {
                    m_result.jobs += 1;
                    m_result.without += found ? 0 : 1;
                }
            }
        }
        for (std::size_t i = 0; i < kStrings; ++i) {
            m_kept[i].asked.push_back(asked[i]);
            m_kept[i].demand.addDay(asked[i]);
        }
    }

    /// What strings sell on the whole and how days clump, from all that was seen; each string's history anew under it.
    void lookBack() {
        std::vector<std::vector<double>> months; // each by itself, so that no season is taken for clumping
        double jobs = 0;
        for (const Kept& kept : m_kept) {
            for (auto day = kept.asked.begin(); kept.asked.end() - day >= kLookBackEvery; day += kLookBackEvery) {
                months.emplace_back(day, day + kLookBackEvery);
            }
            jobs += std::accumulate(kept.asked.begin(), kept.asked.end(), 0.0);
        }
        if (jobs <= 0) {
            return;
        }
        m_service.dailyRatio = stock::dailyRatio(months);
        const double perStringAndDay = jobs / static_cast<double>(kStrings * m_kept.front().asked.size());
        for (Kept& kept : m_kept) {
            kept.demand = stock::Demand::likeOthers(perStringAndDay);
            for (const double day : kept.asked) {
                kept.demand.addDay(day);
            }
        }
    }

    void order() {
        if (m_rule == OrderRule::BelowTwoJobs) {
            for (std::size_t i = 0; i < kStrings; ++i) {
                if (m_kept[i].wholeJobs() < 2) {
                    Parcel parcel = newParcel();
                    parcel.reels[i] = 1;
                    send(parcel);
                }
            }
            return;
        }
        std::vector<stock::StringPosition> positions;
        for (std::size_t i = 0; i < kStrings; ++i) {
            positions.push_back(positionOf(i));
        }
        if (m_rule == OrderRule::OrderPointTogether) {
            draft(positions);
            return;
        }
        for (stock::StringPosition& position : positions) {
            position.reelsPerOrder = m_rule == OrderRule::ReelByReel ? 1 : position.reelsPerOrder;
            draft({position});
        }
    }

    [[nodiscard]] stock::StringPosition positionOf(std::size_t i) const {
        const Kept& kept = m_kept[i];
        const double reelsPerYear = kept.demand.jobsPerDay() * 365 / kJobsPerReel;
        return {.article = StringArticleId::of(static_cast<std::int64_t>(i)),
                .positionJobs = kept.positionJobs(),
                .s = stock::jobsUntilDelivery(kept.demand, stock::LeadTimes(m_leadDays), m_service),
                .jobsPerDay = kept.demand.jobsPerDay(),
                .jobsPerReel = kJobsPerReel,
                .reelsPerOrder = stock::reelsPerOrder(reelsPerYear, static_cast<double>(kReelPrice.minor()),
                                                      {.perOrder = shippingOfALine()}),
                .reelPrice = kReelPrice};
    }

    /// A parcel's shipping is shared by all that it brings.
    [[nodiscard]] double shippingOfALine() const {
        return static_cast<double>(kShipping.minor()) * std::max(1, m_parcelsSent) / std::max(1, m_linesSent);
    }

    void draft(const std::vector<stock::StringPosition>& positions) {
        const auto lines = stock::draftOrder(positions, {.shipping = kShipping, .freeFrom = std::nullopt});
        if (lines.empty()) {
            return;
        }
        Parcel parcel = newParcel();
        ++m_parcelsSent;
        m_linesSent += static_cast<int>(lines.size());
        for (const stock::DraftLine& line : lines) {
            parcel.reels[static_cast<std::size_t>(line.article.value())] += line.reels;
        }
        send(parcel);
    }

    [[nodiscard]] Parcel newParcel() {
        const int days = m_world.leadDays();
        return {.arrives = m_day + days, .days = days};
    }

    void send(const Parcel& parcel) {
        for (std::size_t i = 0; i < kStrings; ++i) {
            m_kept[i].reelsOnTheWay += parcel.reels[i];
        }
        m_parcels.push_back(parcel);
        m_result.parcels += m_day >= kWarmUpDays ? 1 : 0;
    }

    [[nodiscard]] double metresOnTheShelf() const {
        double metres = 0;
        for (const Kept& kept : m_kept) {
            for (const stock::CutSource& lot : kept.lots) {
                metres += lot.length.metres();
            }
        }
        return metres;
    }

    OrderRule m_rule;
    OrderingWorld m_world;
    std::vector<Kept> m_kept;
    std::vector<Parcel> m_parcels;
    std::vector<double> m_leadDays;
    stock::Service m_service;
    int m_parcelsSent = 0;
    int m_linesSent = 0;
    int m_day = 0;
    OrderingResult m_result;
};
} // namespace

OrderingResult runOrdering(OrderRule rule, double jobsPerMonth, std::uint64_t seed) {
    return Run(rule, jobsPerMonth, seed).result();
}

} // namespace rw::world
