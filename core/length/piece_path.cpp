// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/piece_path.h"

#include <cmath>

namespace rw::length {

namespace {
bool isCross(const StringId& id) { return id.kind == StringId::Kind::Cross; }

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

double distance(const Point& a, const Point& b) { return std::hypot(a.x - b.x, a.y - b.y); }

/// Adds up one arm, string by string.
class Walk {
public:
    Walk(const StringBed& bed, const Outline& outline, const CutRequest& request)
        : m_bed(bed)
        , m_wall(outline.wallMm)
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
                link = distance(carried(before.end, before.from, m_wall), carried(ends.from, ends.end, m_wall));
                if (link > kLongRunMm) {
                    longRuns.push_back({before.id, laid.id, link});
                }
            }
            add(path.sums, laid.id, string.chordMm, link);
            path.arm.strings.push_back({laid.id, laid.to, string.chordMm, ends.from, ends.end});
        }
        path.arm.pathMm = path.sums.pathMm();
        return path;
    }

    /// The point outside the hoop where the first string of an arm begins.
    [[nodiscard]] Point begin(const RouteArm& route) const {
        const RouteString& first = route.strings.front();
        const Ends2 ends = endsOf(m_bed.at(first.id), first.to);
        return carried(ends.from, ends.end, m_wall);
    }

private:
    void add(PathSums& sums, const StringId& id, double chordMm, double linkMm) const {
        const double crimp = m_h > 0 ? m_bed.crimpOf(id, m_h) : 0;
        const double path = chordMm + 2 * m_wall + linkMm + crimp;
        const Stretch& stretch = isCross(id) ? m_crosses : m_mains;
        const double slack = path / (1 + stretch.share);
        sums += {.chordsMm = chordMm,
                 .wallsMm = 2 * m_wall,
                 .linksMm = linkMm,
                 .crimpMm = crimp,
                 .slackMm = slack,
                 .spreadMm = slack * stretch.standardDeviation / (1 + stretch.share)};
    }

    const StringBed& m_bed;
    double m_wall;
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

PiecePath pathOf(const RoutedPiece& piece, const StringBed& bed, const Outline& outline, const CutRequest& request) {
    const Walk walk(bed, outline, request);
    PiecePath path{piece.role, {}, {}};
    path.arms.reserve(piece.arms.size());
    const double halfLoop =
        piece.arms.size() == 2 ? distance(walk.begin(piece.arms.front()), walk.begin(piece.arms.back())) / 2 : 0;
    for (const RouteArm& arm : piece.arms) {
        path.arms.push_back(walk.arm(arm, halfLoop, path.longRuns));
    }
    return path;
}

} // namespace rw::length
