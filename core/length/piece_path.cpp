// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/piece_path.h"

#include <cmath>

namespace rw::length {

namespace {
/// Where a string that runs this way begins (`from`) and ends on the inner edge.
struct Ends2 {
    Point from;
    Point end;
};

Ends2 endsOf(const BedString& string, RunsTo to) {
    const bool towardHigh = to == RunsTo::Head || to == RunsTo::Right;
    return towardHigh ? Ends2{string.low, string.high} : Ends2{string.high, string.low};
}

/// `tip` carried `wall` further on the line from `other`.
Point carried(const Point& tip, const Point& other, double wall) {
    const double dx = tip.x - other.x;
    const double dy = tip.y - other.y;
    const double length = std::hypot(dx, dy);
    return {tip.x + dx / length * wall, tip.y + dy / length * wall};
}

/// Where a string leaves the frame.
struct Exit {
    StringId id;
    Point at;
};

double distance(const Point& a, const Point& b) { return std::hypot(a.x - b.x, a.y - b.y); }

/// Adds up one arm, string by string.
class Walk {
public:
    Walk(const StringBed& bed, const CutRequest& request)
        : m_bed(bed)
        , m_h(request.crimp ? (request.mains.diameterMm + request.crosses.diameterMm) / 2 : 0)
        , m_mains(request.stretch ? stretchOf(request.mains) : Stretch{})
        , m_crosses(request.stretch ? stretchOf(request.crosses) : Stretch{}) {}

    /// `startLinkMm`: this arm's share of the centre loop.
    ArmPath arm(const RouteArm& route, double startLinkMm, std::vector<LongRun>& longRuns) const {
        ArmPath path{{route.side, {}, route.endsAtEnd, route.endsAtSide, 0}, {}};
        path.arm.strings.reserve(route.strings.size());
        double link = startLinkMm;
        for (const RouteString& laid : route.strings) {
            const BedString& string = m_bed.at(laid.id);
            const Ends2 ends = endsOf(string, laid.to);
            if (!path.arm.strings.empty()) {
                const LaidString& before = path.arm.strings.back();
                link = noted({before.id, carried(before.end, before.from, before.wallMm)},
                             {laid.id, carried(ends.from, ends.end, string.wallMm)}, longRuns);
            }
            add(path.sums, laid.id, string, link);
            path.arm.strings.push_back({laid.id, laid.to, string.chordMm, ends.from, ends.end, string.wallMm});
        }
        path.arm.pathMm = path.sums.pathMm();
        return path;
    }

    /// Where the first string of an arm begins.
    [[nodiscard]] Exit begin(const RouteArm& route) const {
        const RouteString& first = route.strings.front();
        const BedString& string = m_bed.at(first.id);
        const Ends2 ends = endsOf(string, first.to);
        return {first.id, carried(ends.from, ends.end, string.wallMm)};
    }

    /// The straight run between two exits.
    static double noted(const Exit& from, const Exit& to, std::vector<LongRun>& longRuns) {
        const double run = distance(from.at, to.at);
        if (run > kLongRunMm) {
            const bool across = from.at.x * to.at.x < 0 && from.at.y < 0 && to.at.y < 0;
            longRuns.push_back({from.id, to.id, run, across});
        }
        return run;
    }

private:
    void add(PathSums& sums, const StringId& id, const BedString& string, double linkMm) const {
        const double crimp = m_h > 0 ? m_bed.crimpOf(id, m_h) : 0;
        const double walls = 2 * string.wallMm;
        const double path = string.chordMm + walls + linkMm + crimp;
        const Stretch& stretch = id.isMain() ? m_mains : m_crosses;
        const double slack = path / (1 + stretch.share);
        sums += {.chordsMm = string.chordMm,
                 .wallsMm = walls,
                 .linksMm = linkMm,
                 .crimpMm = crimp,
                 .slackMm = slack,
                 .spreadMm = slack * stretch.standardDeviation / (1 + stretch.share)};
    }

    const StringBed& m_bed;
    double m_h;
    Stretch m_mains;
    Stretch m_crosses;
};
} // namespace

PathSums& PathSums::operator+=(const PathSums& more) {
    chordsMm += more.chordsMm;
    wallsMm += more.wallsMm;
    linksMm += more.linksMm;
    crimpMm += more.crimpMm;
    slackMm += more.slackMm;
    spreadMm += more.spreadMm;
    return *this;
}

PathSums PiecePath::sums() const {
    PathSums sums;
    for (const ArmPath& arm : arms) {
        sums += arm.sums;
    }
    return sums;
}

PiecePath pathOf(const RoutedPiece& piece, const StringBed& bed, const CutRequest& request) {
    const Walk walk(bed, request);
    PiecePath path{piece.role, {}, {}};
    path.arms.reserve(piece.arms.size());
    const double halfLoop =
        piece.arms.size() == 2
            ? Walk::noted(walk.begin(piece.arms.front()), walk.begin(piece.arms.back()), path.longRuns) / 2
            : 0;
    for (const RouteArm& arm : piece.arms) {
        path.arms.push_back(walk.arm(arm, halfLoop, path.longRuns));
    }
    return path;
}

} // namespace rw::length
