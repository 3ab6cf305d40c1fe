// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/head_geometry.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rw::ui {

namespace {
using length::StringId;

constexpr std::size_t kEdgePoints = 720; // a step of about 1.3 mm on a tennis head
constexpr double kShortLift = 6;         // how far a run to the next hole stands off the hoop, mm
constexpr double kLongLift = 10;         // a run past other holes goes round outside their loops
constexpr double kLongRun = 60;          // longer runs pass other holes

QPointF picture(const length::Point& point) { return {point.x, -point.y}; }

double norm(const QPointF& v) { return std::hypot(v.x(), v.y()); }

QPointF unit(const QPointF& v) {
    const double length = norm(v);
    return length > 0 ? v / length : QPointF(0, -1);
}

bool isMain(const StringId& id) { return id.kind != StringId::Kind::Cross; }

/// Where two chords meet, as shares of each; nothing when they do not.
std::optional<std::pair<double, double>> meeting(const QLineF& one, const QLineF& other) {
    const QPointF r = one.p2() - one.p1();
    const QPointF s = other.p2() - other.p1();
    const double across = r.x() * s.y() - r.y() * s.x();
    if (std::abs(across) < 1e-9) {
        return std::nullopt;
    }
    const QPointF between = other.p1() - one.p1();
    const double t = (between.x() * s.y() - between.y() * s.x()) / across;
    const double u = (between.x() * r.y() - between.y() * r.x()) / across;
    if (t <= 0 || t >= 1 || u <= 0 || u >= 1) {
        return std::nullopt;
    }
    return std::pair{t, u};
}

/// A share of `chord` as a share of the `line` that it is a part of.
double shareOfLine(const QLineF& line, const QLineF& chord, double share) {
    return norm(chord.pointAt(share) - line.p1()) / line.length();
}

QLineF throughTheWall(const QLineF& chord, double wall) {
    const QPointF along = unit(chord.p2() - chord.p1()) * wall;
    return {chord.p1() - along, chord.p2() + along};
}
} // namespace

HeadGeometry::HeadGeometry(const length::CutPlan& plan)
    : m_wall(plan.hoop.wallMm) {
    for (const length::PiecePlan& piece : plan.pieces) {
        for (const length::Arm& arm : piece.arms) {
            for (const length::LaidString& laid : arm.strings) {
                m_mainsLeft += laid.id.kind == StringId::Kind::MainLeft ? 1 : 0;
                m_hasCentreMain = m_hasCentreMain || laid.id.kind == StringId::Kind::MainCentre;
                m_mains += isMain(laid.id) ? 1 : 0;
                m_crosses += isMain(laid.id) ? 0 : 1;
            }
        }
    }
    sampleEdge(plan.hoop);
    layStrings(plan);
    weave();
    leanFlags();
}

int HeadGeometry::placeOf(const StringId& id) const {
    switch (id.kind) {
    case StringId::Kind::MainLeft:
        return m_mainsLeft - id.number + 1;
    case StringId::Kind::MainCentre:
        return m_mainsLeft + 1;
    case StringId::Kind::MainRight:
        return m_mainsLeft + (m_hasCentreMain ? 1 : 0) + id.number;
    case StringId::Kind::Cross:
        break;
    }
    return id.number;
}

void HeadGeometry::sampleEdge(const length::Outline& outline) {
    const double halfWidth = outline.widthMm / 2;
    const double below = outline.widestFromThroat * outline.lengthMm;
    const double above = outline.lengthMm - below;
    const double widest = below - outline.lengthMm / 2;
    // Points of a superellipse crowd away from its tips when n is not 2, so it is sampled finely first and then
    // evenly along the line.
    constexpr std::size_t kFine = 8 * kEdgePoints;
    std::vector<QPointF> fine;
    std::vector<double> walked{0};
    for (std::size_t i = 0; i <= kFine; ++i) {
        const double turn = 2 * std::numbers::pi * static_cast<double>(i) / kFine;
        const double c = std::cos(turn);
        const double s = std::sin(turn);
        const double n = s >= 0 ? outline.headExponent : outline.throatExponent;
        const double x = halfWidth * std::copysign(std::pow(std::abs(c), 2 / n), c);
        const double y = widest + (s >= 0 ? above : below) * std::copysign(std::pow(std::abs(s), 2 / n), s);
        fine.push_back(picture({x, y}));
        if (i > 0) {
            walked.push_back(walked.back() + norm(fine[i] - fine[i - 1]));
        }
    }
    std::size_t at = 0;
    for (std::size_t i = 0; i < kEdgePoints; ++i) {
        const double goal = walked.back() * static_cast<double>(i) / kEdgePoints;
        while (at + 2 < fine.size() && walked[at + 1] < goal) {
            ++at;
        }
        const double share = (goal - walked[at]) / std::max(1e-12, walked[at + 1] - walked[at]);
        m_edge.push_back(fine[at] + (fine[at + 1] - fine[at]) * share);
    }
    for (std::size_t i = 0; i < kEdgePoints; ++i) {
        const QPointF along = m_edge[(i + 1) % kEdgePoints] - m_edge[(i + kEdgePoints - 1) % kEdgePoints];
        m_normals.push_back(unit({-along.y(), along.x()})); // sampled against the clock, so this points outwards
        if (QPointF::dotProduct(m_normals.back(), m_edge[i]) < 0) {
            m_normals.back() = -m_normals.back();
        }
    }
}

QPainterPath HeadGeometry::edge(double outwards) const {
    QPainterPath path;
    for (std::size_t i = 0; i < m_edge.size(); ++i) {
        const QPointF point = m_edge[i] + m_normals[i] * outwards;
        i == 0 ? path.moveTo(point) : path.lineTo(point);
    }
    path.closeSubpath();
    return path;
}

std::size_t HeadGeometry::nearest(const QPointF& point) const {
    std::size_t best = 0;
    double least = norm(point - m_edge[0]);
    for (std::size_t i = 1; i < m_edge.size(); ++i) {
        const double distance = norm(point - m_edge[i]);
        if (distance < least) {
            least = distance;
            best = i;
        }
    }
    return best;
}

QPointF HeadGeometry::normalAt(const QPointF& point) const { return m_normals[nearest(point)]; }

QPointF HeadGeometry::outside(const QPointF& inside, double outwards) const {
    const std::size_t i = nearest(inside);
    return m_edge[i] + m_normals[i] * outwards;
}

QPainterPath HeadGeometry::linkPath(const QPointF& from, const QPointF& to) const {
    const auto count = static_cast<long>(m_edge.size());
    const auto first = static_cast<long>(nearest(from));
    long steps = static_cast<long>(nearest(to)) - first;
    if (steps > count / 2) {
        steps -= count;
    } else if (steps < -count / 2) {
        steps += count;
    }
    const double step = norm(m_edge[1] - m_edge[0]);
    const double run = std::max(1.0, static_cast<double>(std::abs(steps)) * step);
    if (run <= kLongRun) {
        // A loop to the next hole: out of one, into the other.
        const double reach = kShortLift / 0.75; // a cubic with both handles of one length rises to 3/4 of it
        QPainterPath loop(from);
        loop.cubicTo(outside(from, m_wall + reach), outside(to, m_wall + reach), to);
        return loop;
    }
    const double lift = kLongLift;
    const double ramp = std::min(run / 2, 2 * lift);
    const auto onEdge = [&](double share) {
        const double place = static_cast<double>(first) + share * static_cast<double>(steps);
        const auto i = static_cast<long>(std::floor(place));
        const double rest = place - std::floor(place);
        const auto wrapped = [&](long k) { return static_cast<std::size_t>(((k % count) + count) % count); };
        const QPointF point = m_edge[wrapped(i)] * (1 - rest) + m_edge[wrapped(i + 1)] * rest;
        const QPointF out = m_normals[wrapped(i)] * (1 - rest) + m_normals[wrapped(i + 1)] * rest;
        const double near = std::min({1.0, share * run / ramp, (1 - share) * run / ramp});
        return point + out * (m_wall + lift * std::sin(near * std::numbers::pi / 2));
    };
    const QPointF offFrom = from - onEdge(0);
    const QPointF offTo = to - onEdge(1);
    QPainterPath path(from);
    const int pieces = std::max(12, static_cast<int>(run / 3));
    for (int k = 1; k <= pieces; ++k) {
        const double share = static_cast<double>(k) / pieces;
        const double nearFrom = std::max(0.0, 1 - share * run / ramp);
        const double nearTo = std::max(0.0, 1 - (1 - share) * run / ramp);
        path.lineTo(onEdge(share) + offFrom * nearFrom + offTo * nearTo);
    }
    return path;
}

void HeadGeometry::layStrings(const length::CutPlan& plan) {
    for (std::size_t p = 0; p < plan.pieces.size(); ++p) {
        const std::vector<length::Arm>& arms = plan.pieces[p].arms;
        std::vector<QPointF> begins;
        for (std::size_t a = 0; a < arms.size(); ++a) {
            std::optional<QPointF> last;
            for (const length::LaidString& laid : arms[a].strings) {
                Lying lying{.id = laid.id,
                            .piece = p,
                            .arm = a,
                            .line = {},
                            .chord = QLineF(picture(laid.from), picture(laid.end)),
                            .unders = {}};
                lying.line = throughTheWall(lying.chord, laid.wallMm);
                if (last) {
                    m_links.push_back({p, a, linkPath(*last, lying.line.p1()), false});
                } else {
                    begins.push_back(lying.line.p1());
                }
                last = lying.line.p2();
                m_strings.push_back(std::move(lying));
            }
            if (last) {
                m_ends.push_back({p, a, *last, normalAt(*last), {}});
            }
        }
        if (begins.size() == 2 && norm(begins[0] - begins[1]) > 0.5) {
            Link loop{p, 0, linkPath(begins[0], begins[1]), true};
            const QPointF middle = loop.path.pointAtPercent(0.5);
            m_starts.push_back({p, 0, middle, normalAt(middle), {}});
            m_links.push_back(std::move(loop));
        } else if (!begins.empty()) {
            m_starts.push_back({p, 0, begins[0], normalAt(begins[0]), {}});
        }
    }
}

void HeadGeometry::leanFlags() {
    constexpr double kNear = 40; // nearer than this their words would cover one another
    for (std::size_t i = 0; i < m_ends.size(); ++i) {
        Mark& end = m_ends[i];
        // Steeper than straight out, away from the words at the sides; flatter where a neighbour stands steep already.
        const double up = end.at.y() < 0 ? -0.55 : 0.55;
        const bool crowded = std::any_of(m_ends.begin(), m_ends.begin() + static_cast<std::ptrdiff_t>(i),
                                         [&](const Mark& other) { return norm(other.at - end.at) < kNear; });
        end.lean = unit(end.outwards + QPointF(0, crowded ? -up : up));
    }
}

void HeadGeometry::weave() {
    for (Lying& main : m_strings) {
        if (!isMain(main.id)) {
            continue;
        }
        for (Lying& cross : m_strings) {
            if (isMain(cross.id)) {
                continue;
            }
            const auto place = meeting(main.chord, cross.chord);
            if (!place) {
                continue;
            }
            if (crossIsOver(placeOf(cross.id), placeOf(main.id))) {
                main.unders.push_back(shareOfLine(main.line, main.chord, place->first));
            } else {
                cross.unders.push_back(shareOfLine(cross.line, cross.chord, place->second));
            }
        }
    }
    for (Lying& lying : m_strings) {
        std::ranges::sort(lying.unders);
    }
}

} // namespace rw::ui
