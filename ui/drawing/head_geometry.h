// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"

#include <QLineF>
#include <QPainterPath>
#include <QPointF>

#include <cstddef>
#include <optional>
#include <vector>

namespace rw::ui {

/// What a cut plan looks like from above, in millimetres as a picture counts them: x to the right, y down, the head
/// at the top. Knows nothing of colours and pens.
class HeadGeometry {
public:
    explicit HeadGeometry(const length::CutPlan& plan);

    /// The hoop between the inner edge and `outwards` beyond it.
    [[nodiscard]] QPainterPath innerEdge() const { return edge(0); }
    [[nodiscard]] QPainterPath edge(double outwards) const;
    [[nodiscard]] double wall() const { return m_wall; }

    /// A string as it lies: through the wall at both ends, and where it dives under another one.
    struct Lying {
        length::StringId id{length::StringId::Kind::Cross, 0};
        std::size_t piece = 0;
        std::size_t arm = 0;
        QLineF line;                ///< from where it enters the hoop from outside to where it leaves it
        QLineF chord;               ///< the part inside the hoop
        std::vector<double> unders; ///< places along `line`, 0 to 1 and rising, where another string lies over it
    };
    [[nodiscard]] const std::vector<Lying>& strings() const { return m_strings; }

    /// An outside run of string from one hole to the next.
    struct Link {
        std::size_t piece = 0;
        std::size_t arm = 0;
        QPainterPath path;
        bool isStart = false; ///< the loop in the middle from which two arms go out
    };
    [[nodiscard]] const std::vector<Link>& links() const { return m_links; }

    /// Where a piece begins or is tied off: on the outer edge, with the direction away from the hoop.
    struct Mark {
        std::size_t piece = 0;
        std::size_t arm = 0;
        QPointF at;
        QPointF outwards; ///< a unit vector
        QPointF lean;     ///< of a flag's pole, a unit vector: neighbouring flags lean apart
    };
    [[nodiscard]] const std::vector<Mark>& starts() const { return m_starts; }
    [[nodiscard]] const std::vector<Mark>& ends() const { return m_ends; }

    /// Mains from left to right count 1 to M, crosses from the head 1 to X.
    [[nodiscard]] int mains() const { return m_mains; }
    [[nodiscard]] int crosses() const { return m_crosses; }
    [[nodiscard]] int placeOf(const length::StringId& id) const;
    /// Cross c lies over main m when c + m is even (all the other way round is woven as well).
    [[nodiscard]] static bool crossIsOver(int cross, int main) { return (cross + main) % 2 == 0; }

    /// A place outside the hoop, `outwards` from the inner edge, on the way straight out from `inside`.
    [[nodiscard]] QPointF outside(const QPointF& inside, double outwards) const;
    [[nodiscard]] QPointF normalAt(const QPointF& point) const;

private:
    void sampleEdge(const length::Outline& outline);
    void layStrings(const length::CutPlan& plan);
    void weave();
    void leanFlags();
    [[nodiscard]] std::size_t nearest(const QPointF& point) const;
    [[nodiscard]] QPainterPath linkPath(const QPointF& from, const QPointF& to) const;

    double m_wall;
    int m_mainsLeft = 0;
    bool m_hasCentreMain = false;
    int m_mains = 0;
    int m_crosses = 0;
    std::vector<QPointF> m_edge;    ///< closed, evenly spaced enough to be a line
    std::vector<QPointF> m_normals; ///< outward unit vectors
    std::vector<Lying> m_strings;
    std::vector<Link> m_links;
    std::vector<Mark> m_starts;
    std::vector<Mark> m_ends;
};

} // namespace rw::ui
