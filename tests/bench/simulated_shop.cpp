// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/simulated_shop.h"

#include "core/length/cut_plan.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace rw::bench {

namespace {
using length::CutPlan;
using length::CutRequest;
using length::Experience;
using length::FinishedPiece;
using length::Learnt;
using length::Observation;

constexpr int kJobs = 2000;
constexpr int kEarlyJobs = 10;
constexpr std::size_t kMostBiasGroups = 60;

using Part = Learnt Experience::*;
constexpr Part kParts[] = {&Experience::mains, &Experience::crosses, &Experience::whole, &Experience::shortSide};

/// What a part of a job was cut, and what it needed.
struct Piece {
    JobPart part;
    double cutMm;
    double needMm;

    [[nodiscard]] bool isShort() const { return needMm > cutMm; }
};

class Shop {
public:
    Shop(const Scenario& scenario, unsigned seed)
        : m_scenario(scenario)
        , m_world(scenario.truth, scenario.method, seed)
        , m_known(m_world.frames().size())
        , m_jobs(m_world.frames().size(), 0) {}

    Outcome run() {
        double overCutLate = 0;
        double overCutFirst = 0;
        int first = 0;
        for (int job = 0; job < kJobs; ++job) {
            const std::size_t frame = m_world.nextFrame();
            const double overCut = doJob(frame);
            const bool late = m_jobs[frame] >= kEarlyJobs;
            const bool isShort = m_lastWasShort;
            ++m_outcome.jobs;
            m_outcome.shortJobs += isShort ? 1 : 0;
            m_outcome.lateJobs += late ? 1 : 0;
            m_outcome.shortLateJobs += late && isShort ? 1 : 0;
            overCutLate += late ? overCut : 0;
            if (m_jobs[frame] == 0) {
                overCutFirst += overCut;
                ++first;
            }
            ++m_jobs[frame];
        }
        m_outcome.overCutLateM = overCutLate / m_outcome.lateJobs / 1000;
        m_outcome.overCutFirstM = overCutFirst / first / 1000;
        return m_outcome;
    }

private:
    /// Cuts, strings and notes one job; returns what it cut beyond its need, mm.
    double doJob(std::size_t frame) {
        const SimulatedFrame& known = m_world.frames()[frame];
        CutRequest request = known.request;
        request.experience = m_known[frame];
        for (const Part part : kParts) {
            (request.experience.*part).shopBias = biasWithout(frame, part);
        }
        if (m_scenario.costed) {
            request.costPerMetre = 0.60; // and 25 minutes at 36 an hour
            request.spoiledJobCost = 15;
        }
        const auto plan = planCut(request);
        if (!plan) {
            throw std::logic_error("a frame of the simulated shop cannot be planned");
        }
        std::vector<Piece> pieces = cut(*plan, known);
        double over = 0;
        m_lastWasShort = false;
        for (const Piece& piece : pieces) {
            over += piece.cutMm - piece.needMm;
            m_lastWasShort = m_lastWasShort || piece.isShort();
        }
        note(*plan, pieces, m_known[frame], request);
        return over;
    }

    std::vector<Piece> cut(const CutPlan& plan, const SimulatedFrame& frame) {
        std::vector<Piece> pieces;
        for (const length::PiecePlan& piece : plan.pieces) {
            const double cut = piece.cut.metres() * 1000;
            if (!piece.shortSide) {
                const JobPart part = piece.role == PieceRole::Mains ? JobPart::Mains : JobPart::Crosses;
                pieces.push_back({part, cut, m_world.needOf(part, frame, piece.predictedMm)});
                continue;
            }
            const double measure = piece.shortSide->measure.metres() * 1000;
            const double predicted = piece.shortSide->predictedMm;
            pieces.push_back({JobPart::ShortSide, measure, m_world.needOf(JobPart::ShortSide, frame, predicted)});
            pieces.push_back({JobPart::LongSide, cut - measure,
                              m_world.needOf(JobPart::LongSide, frame, piece.predictedMm - predicted)});
        }
        return pieces;
    }

    void note(const CutPlan& plan, const std::vector<Piece>& pieces, Experience& known, const CutRequest& request) {
        const bool tails = m_scenario.noting == Noting::EveryTail ||
                           (m_scenario.noting == Noting::HalfTheTails && m_world.chance(0.5));
        for (const Piece& piece : pieces) {
            if (piece.part == JobPart::LongSide) {
                continue; // the whole learns
            }
            noteOne(plan, piece, tails, known, request);
        }
        if (plan.method == Method::OnePiece) {
            noteOne(plan, wholeOf(pieces), tails, known, request);
        }
    }

    /// What is known of the whole from its two sides. Where one came short, the other's rest could not help it: the
    /// whole needed more than the cut without that rest.
    static Piece wholeOf(const std::vector<Piece>& sides) {
        Piece whole{JobPart::LongSide, 0, 0};
        const bool anyShort = std::ranges::any_of(sides, &Piece::isShort);
        for (const Piece& side : sides) {
            whole.cutMm += anyShort ? std::min(side.cutMm, side.needMm) : side.cutMm;
            whole.needMm += side.needMm;
        }
        return whole;
    }

    void noteOne(const CutPlan& plan, const Piece& piece, bool tails, Experience& known, const CutRequest& request) {
        FinishedPiece finished{.role = PieceRole::Whole, .cutMm = piece.cutMm};
        Part part = &Experience::whole;
        double predicted = plan.pieces.front().predictedMm;
        int pulled = 2;
        switch (piece.part) {
        case JobPart::Mains:
            part = &Experience::mains;
            break;
        case JobPart::Crosses:
            part = &Experience::crosses;
            predicted = plan.pieces.back().predictedMm;
            pulled = 1;
            break;
        case JobPart::ShortSide:
            part = &Experience::shortSide;
            predicted = plan.pieces.front().shortSide->predictedMm;
            pulled = 1;
            break;
        case JobPart::LongSide:
            break;
        }
        const double back = pulled * (request.ends.reachMm - request.ends.knotUseMm);
        const double left = piece.cutMm - piece.needMm + back;
        if (piece.isShort()) {
            finished.outcome = FinishedPiece::Outcome::Short;
        } else if (m_scenario.noting == Noting::InWords) {
            inWords(left, finished);
        } else if (tails) {
            finished.outcome = FinishedPiece::Outcome::Tails;
            finished.tailsLowMm = finished.tailsHighMm = left;
        }
        (known.*part).seen.push_back(observationOf(finished, predicted, back, "evidence").value());
    }

    /// All tails together: up to a hand, two hands, a head length, two head lengths, more.
    static void inWords(double leftMm, FinishedPiece& finished) {
        constexpr double kWords[] = {0, 180, 360, 520, 700};
        finished.outcome = FinishedPiece::Outcome::Tails;
        finished.tailsLowMm = kWords[4];
        finished.tailsHighMm = finished.cutMm;
        for (std::size_t i = 0; i + 1 < std::size(kWords); ++i) {
            if (leftMm < kWords[i + 1]) {
                finished.tailsLowMm = kWords[i];
                finished.tailsHighMm = kWords[i + 1];
                return;
            }
        }
    }

    [[nodiscard]] length::Belief biasWithout(std::size_t frame, Part part) const {
        std::vector<std::span<const Observation>> groups;
        groups.reserve(kMostBiasGroups);
        for (std::size_t i = 0; i < m_known.size(); ++i) {
            if (i != frame) {
                groups.emplace_back((m_known[i].*part).seen);
            }
        }
        return length::shopBias(groups);
    }

    Scenario m_scenario;
    SimulatedWorld m_world;
    std::vector<Experience> m_known;
    std::vector<int> m_jobs;
    bool m_lastWasShort = false;
    Outcome m_outcome;
};
} // namespace

Outcome runShop(const Scenario& scenario, unsigned seed) { return Shop(scenario, seed).run(); }

} // namespace rw::bench
