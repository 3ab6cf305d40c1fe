// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/stories/harbour_lane.h"

#include <cstdint>
#include <functional>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace rw::stories {

/// Everything that changes a ledger's string and jobs, in any order: reels come in, jobs are promised, taken, cut,
/// lost, put down, finished, cancelled and taken up again, lots are measured, thrown away and given back, and what was
/// done by mistake is taken back. Some of it is refused; nothing of it may break a rule. The same seed does the same.
class RandomWork {
public:
    RandomWork(desk::Ledger& ledger, const HarbourLane& shop, std::uint64_t seed);

    /// One command; now and then it is given twice.
    void next();

    /// What the ledger must hold by what was done, kept apart from it: the length of every lot by its tag.
    [[nodiscard]] const std::map<std::string, Length>& lots() const { return m_lots; }
    [[nodiscard]] std::size_t jobs() const { return m_jobs.size(); }
    [[nodiscard]] const std::map<std::string, int>& done() const { return m_done; } ///< how often what was not refused

private:
    using Command = std::function<bool()>;

    Command receive();
    Command promise();
    Command onJob();
    Command onLot();
    Command take(const Job& job);
    Command cut(const Job& job);
    Command lose(const Job& job);
    Command takeBackCut(const Job& job);
    Command takeBackStep(const Lot& lot);

    /// A command that changes no lot by itself.
    template<class Work>
    Command plain(std::string name, Work work);
    /// Writes in the own book what a lot holds after what was done to it.
    void book(const std::string& tag, Length length) { m_lots.insert_or_assign(tag, length); }

    [[nodiscard]] By by(std::string_view station) const;
    [[nodiscard]] int upTo(int most) { return std::uniform_int_distribution<>(0, most)(m_random); }
    [[nodiscard]] bool oneIn(int times) { return upTo(times - 1) == 0; }
    template<class T>
    const T& any(const std::vector<T>& of) {
        return of[static_cast<std::size_t>(upTo(static_cast<int>(of.size()) - 1))];
    }
    [[nodiscard]] std::vector<Lot> openLots();

    struct Owned {
        CustomerId customer;
        RacketId racket;
        FrameModelId frame;
    };

    desk::Ledger& m_ledger;
    const HarbourLane& m_shop;
    std::mt19937_64 m_random;
    std::vector<Owned> m_rackets;
    std::vector<JobId> m_jobs;
    std::map<std::string, Length> m_lots;
    std::map<std::string, int> m_done;
    std::int64_t m_minute = 0;
    int m_keys = 0;
};

} // namespace rw::stories
