// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/sample_plans.h"

#include <cmath>
#include <sstream>

namespace rw::ui::samples {

namespace {
using namespace length;

class Bed {
public:
    explicit Bed(const Head& head)
        : m_head(head) {}

    [[nodiscard]] LaidString laid(const StringId& id, Point from) const {
        auto [one, other] = ends(id);
        const auto far = [&](Point p) { return std::hypot(p.x - from.x, p.y - from.y); };
        if (far(other) < far(one)) {
            std::swap(one, other);
        }
        const bool cross = id.kind == StringId::Kind::Cross;
        const RunsTo to =
            cross ? (other.x > 0 ? RunsTo::Right : RunsTo::Left) : (other.y > 0 ? RunsTo::Head : RunsTo::Throat);
        return {id, to, std::hypot(one.x - other.x, one.y - other.y), one, other, m_head.wallMm};
    }

private:
    [[nodiscard]] std::pair<Point, Point> ends(const StringId& id) const {
        const double b = m_head.widthMm / 2;
        const double below = m_head.lengthMm * m_head.widestFromThroat;
        const double above = m_head.lengthMm - below;
        const double widest = below - m_head.lengthMm / 2;
        const double n = m_head.throatExponent;
        if (id.kind == StringId::Kind::Cross) {
            const double gap = m_head.crossesSpanMm / (m_head.crosses - 1);
            const double y = m_head.crossesCentreMm + m_head.crossesSpanMm / 2 - gap * (id.number - 1);
            const double share = y > widest ? (y - widest) / above : (widest - y) / below;
            const double exponent = y > widest ? 2 : n;
            const double x = b * std::pow(1 - std::pow(share, exponent), 1 / exponent);
            return {{-x, y}, {x, y}};
        }
        const double gap = m_head.mainsSpanMm / (m_head.mains - 1);
        const bool odd = m_head.mains % 2 != 0;
        double x = id.kind == StringId::Kind::MainCentre ? 0 : gap * (id.number - (odd ? 0.0 : 0.5));
        if (id.kind == StringId::Kind::MainLeft) {
            x = -x;
        }
        const double across = std::abs(x) / b;
        return {{x, widest + above * std::sqrt(1 - across * across)},
                {x, widest - below * std::pow(1 - std::pow(across, n), 1 / n)}};
    }
    const Head& m_head;
};

StringId idOf(const std::string& word) {
    if (word == "C") {
        return {StringId::Kind::MainCentre, 0};
    }
    if (word.front() == 'X') {
        return {StringId::Kind::Cross, std::stoi(word.substr(1))};
    }
    return {word.back() == 'L' ? StringId::Kind::MainLeft : StringId::Kind::MainRight, std::stoi(word)};
}

Arm arm(const Bed& bed, const ArmText& text, Point from) {
    Arm made{text.side, {}, HoopEnd::Head, Side::Left, 5000};
    const auto lay = [&](const StringId& id) {
        made.strings.push_back(bed.laid(id, from));
        from = made.strings.back().end;
    };
    std::istringstream words(text.strings);
    for (std::string word; words >> word;) {
        const auto dash = word.find('-');
        if (dash == std::string::npos) {
            lay(idOf(word));
            continue;
        }
        StringId id = idOf(word.substr(0, dash));
        const int last = idOf(word.substr(dash + 1)).number;
        for (const int step = last > id.number ? 1 : -1;; id.number += step) {
            lay(id);
            if (id.number == last) {
                break;
            }
        }
    }
    made.endsAtEnd = from.y > 0 ? HoopEnd::Head : HoopEnd::Throat;
    made.endsAtSide = from.x > 0 ? Side::Right : Side::Left;
    return made;
}
} // namespace

CutPlan plan(const Head& head, const std::string& route,
             const std::vector<std::pair<PieceRole, std::vector<ArmText>>>& pieces) {
    const Bed bed(head);
    CutPlan made{.hoop = {head.lengthMm, head.widthMm, head.widestFromThroat, 2, head.throatExponent, head.wallMm, 633,
                          StandsOn::Measured},
                 .method = pieces.size() == 1 ? Method::OnePiece : Method::TwoPiece,
                 .route = route,
                 .mainsStart = head.mainsStart,
                 .headLengthMm = head.lengthMm + head.wallMm,
                 .headWidthMm = head.widthMm + head.wallMm,
                 .pieces = {},
                 .chanceShortJob = 0.01,
                 .why = {}};
    for (const auto& [role, arms] : pieces) {
        PiecePlan piece{};
        piece.role = role;
        for (const ArmText& text : arms) {
            const double side = text.side == Side::Left ? -1 : 1;
            const double end = head.mainsStart == HoopEnd::Head ? 1 : -1;
            const Point from = role == PieceRole::Crosses ? Point{side * head.widthMm, head.lengthMm / 2}
                                                          : Point{side * 1e-3, end * head.lengthMm / 2};
            piece.arms.push_back(arm(bed, text, from));
        }
        if (role == PieceRole::Whole) {
            piece.shortSide = ShortSide{arms.front().side, 2950, Length::fromMillimetres(3000), 8.8};
        }
        piece.cut = Length::fromMillimetres(role == PieceRole::Whole ? 10800 : 6200);
        made.pieces.push_back(std::move(piece));
    }
    return made;
}

CutPlan twoPieces(const Head& head) {
    const std::string n = std::to_string(head.mains / 2);
    return plan(head, "",
                {{PieceRole::Mains, {{Side::Left, "1L-" + n + "L"}, {Side::Right, "1R-" + n + "R"}}},
                 {PieceRole::Crosses, {{Side::Left, "X1-X" + std::to_string(head.crosses)}}}});
}

CutPlan onePiece(Side shortSide, const Head& head) {
    const bool left = shortSide == Side::Left;
    return plan(head, "plain-1",
                {{PieceRole::Whole,
                  {{shortSide, left ? "1L-8L X1" : "1R-8R X1"},
                   {otherSide(shortSide), left ? "1R-8R X2-X19" : "1L-8L X2-X19"}}}});
}

CutPlan wrapFirst(Side shortSide) {
    Head head;
    head.mainsStart = HoopEnd::Throat;
    const bool left = shortSide == Side::Left;
    return plan(head, "wrap-first-2",
                {{PieceRole::Whole,
                  {{shortSide, left ? "1L-7L X1" : "1R-7R X1"},
                   {otherSide(shortSide), left ? "1R-8R X19 8L X2-X18" : "1L-8L X19 8R X2-X18"}}}});
}

CutPlan squash(Side shortSide) {
    Head head{.lengthMm = 360,
              .widthMm = 190,
              .widestFromThroat = 0.6,
              .throatExponent = 1.5,
              .wallMm = 10,
              .mains = 14,
              .crosses = 18,
              .mainsSpanMm = 142,
              .crossesSpanMm = 252,
              .crossesCentreMm = 20,
              .mainsStart = HoopEnd::Throat};
    const bool left = shortSide == Side::Left;
    return plan(head, "plain-2",
                {{PieceRole::Whole,
                  {{shortSide, left ? "1L-7L X1-X2" : "1R-7R X1-X2"},
                   {otherSide(shortSide), left ? "1R-7R X3-X18" : "1L-7L X3-X18"}}}});
}

} // namespace rw::ui::samples
