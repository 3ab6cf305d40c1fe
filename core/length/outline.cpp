// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/outline.h"

#include "core/frames/rule_limits.h"
#include "core/length/exponent_fit.h"
#include "core/length/hoop_curve.h"
#include "core/length/impossible.h"
#include "core/length/request_limits.h"
#include "core/length/sport_defaults.h"

#include <cmath>

namespace rw::length {

namespace {
/// A marked size that fixes no exponent is worth a word when it is this far off: a size is printed in whole square
/// inches, about 1 %, and a tape adds as much. (An open throat's own shape may agree although no one n does.)
constexpr double kMarkedTolerance = 0.02;

struct Shape {
    double lengthMm;
    double widthMm;
    double p;
    double headN;
    double throatN;

    [[nodiscard]] double areaCm2() const { return HoopCurve(lengthMm, widthMm, p, headN, throatN).areaCm2(); }
};

/// Length and width from what is known, the marked size filling in for what is not.
void setSize(Shape& shape, const Hoop& hoop, const UsualHead& usual) {
    // With the shape given, the area is `share` times length times width.
    const double share =
        (1 - shape.p) * HoopCurve::quarterShare(shape.headN) + shape.p * HoopCurve::quarterShare(shape.throatN);
    if (hoop.lengthMm && hoop.widthMm) {
        shape.lengthMm = *hoop.lengthMm;
        shape.widthMm = *hoop.widthMm;
    } else if (hoop.lengthMm) {
        shape.lengthMm = *hoop.lengthMm;
        shape.widthMm = hoop.headAreaCm2 ? *hoop.headAreaCm2 * 100 / (share * *hoop.lengthMm)
                                         : *hoop.lengthMm / usual.lengthToWidth;
    } else if (hoop.widthMm) {
        shape.widthMm = *hoop.widthMm;
        shape.lengthMm =
            hoop.headAreaCm2 ? *hoop.headAreaCm2 * 100 / (share * *hoop.widthMm) : *hoop.widthMm * usual.lengthToWidth;
    } else if (hoop.headAreaCm2) {
        shape.widthMm = std::sqrt(*hoop.headAreaCm2 * 100 / (share * usual.lengthToWidth));
        shape.lengthMm = shape.widthMm * usual.lengthToWidth;
    } else {
        shape.lengthMm = usual.lengthMm;
        shape.widthMm = usual.widthMm;
    }
}

StandsOn standsOnFor(const Hoop& hoop) {
    if (hoop.lengthMm && hoop.widthMm) {
        return StandsOn::Measured;
    }
    if (hoop.headAreaCm2) {
        return hoop.lengthMm || hoop.widthMm ? StandsOn::MeasuredAndMarked : StandsOn::Marked;
    }
    if (hoop.lengthMm) {
        return StandsOn::LengthMeasured;
    }
    return hoop.widthMm ? StandsOn::WidthMeasured : StandsOn::SportOnly;
}

/// Whether the hoop tells of a shape, not only of a size.
bool shapeIsGiven(const Hoop& hoop) {
    return hoop.headExponent || hoop.throatExponent || hoop.outermostMainMm || hoop.lastCrossMm;
}

/// A size that was worked out of the marked one must be one that a head can have.
Result<void> checkSize(const Shape& shape, const Hoop& hoop) {
    const bool lengthFits = kShortestHead <= shape.lengthMm && shape.lengthMm <= kLongestHead;
    const bool widthFits = kNarrowestHead <= shape.widthMm && shape.widthMm <= kWidestHead;
    if (hoop.headAreaCm2 && !(lengthFits && widthFits)) {
        return impossible("hoop.headAreaCm2", *hoop.headAreaCm2,
                          "a size that goes with the other measurements: as it stands the head would be " +
                              plainNumber(std::round(shape.lengthMm)) + " by " +
                              plainNumber(std::round(shape.widthMm)) + " mm");
    }
    if (!widthFits) {
        return impossible("hoop.lengthMm", shape.lengthMm,
                          "a length that goes with a width of " + between(kNarrowestHead, kWidestHead) + " mm");
    }
    if (!lengthFits) {
        return impossible("hoop.widthMm", shape.widthMm,
                          "a width that goes with a length of " + between(kShortestHead, kLongestHead) + " mm");
    }
    if (shape.widthMm > shape.lengthMm) {
        return impossible("hoop.widthMm", shape.widthMm,
                          "not more than the length, " + plainNumber(shape.lengthMm) + " mm");
    }
    return {};
}

Result<void> fitToMeasuredStrings(Shape& shape, const CutRequest& request) {
    const Hoop& hoop = request.hoop;
    const BedSpans spans = bedSpans(request.sport, hoop.openThroat, request.pattern, shape.lengthMm, shape.widthMm);
    if (hoop.lastCrossMm && !hoop.throatExponent) {
        const double y = spans.crossesCentreMm - spans.crossesSpanMm / 2;
        const auto fitted = exponentWhere("hoop.lastCrossMm", *hoop.lastCrossMm, [&](double n) {
            return 2 * HoopCurve(shape.lengthMm, shape.widthMm, shape.p, shape.headN, n).halfWidth(y);
        });
        if (!fitted) {
            return tl::unexpected(fitted.error());
        }
        shape.throatN = *fitted;
    }
    if (hoop.outermostMainMm && !hoop.headExponent) {
        const bool throatKnown = hoop.throatExponent || hoop.lastCrossMm;
        const double x = spans.mainsSpanMm / 2;
        const auto fitted = exponentWhere("hoop.outermostMainMm", *hoop.outermostMainMm, [&](double n) {
            const HoopCurve curve(shape.lengthMm, shape.widthMm, shape.p, n, throatKnown ? shape.throatN : n);
            return curve.top(x) - curve.bottom(x);
        });
        if (!fitted) {
            return tl::unexpected(fitted.error());
        }
        shape.headN = *fitted;
        shape.throatN = throatKnown ? shape.throatN : *fitted;
    }
    return {};
}

void noteRules(std::vector<Why>& why, const Outline& outline, Sport sport, bool openThroat) {
    const RuleLimits limits = ruleLimits(sport, openThroat);
    const auto note = [&](std::string_view measure, double value, const std::optional<double>& limit) {
        if (limit && value > *limit) {
            why.push_back({Why::Kind::LargerThanRules, std::string(measure), value, *limit});
        }
    };
    note("length", outline.lengthMm, limits.lengthMm);
    note("width", outline.widthMm, limits.widthMm);
    note("area", outline.areaCm2, limits.areaCm2);
}
} // namespace

std::string_view standsOnText(StandsOn standsOn) {
    switch (standsOn) {
    case StandsOn::Measured:
        return "measured";
    case StandsOn::MeasuredAndMarked:
        return "measured and marked";
    case StandsOn::Marked:
        return "marked";
    case StandsOn::LengthMeasured:
        return "length measured";
    case StandsOn::WidthMeasured:
        return "width measured";
    case StandsOn::SportOnly:
        return "sport only";
    }
    return {};
}

Result<FoundOutline> findOutline(const CutRequest& request) {
    const Hoop& hoop = request.hoop;
    const UsualHead usual = usualHead(request.sport, hoop.openThroat);
    Shape shape{.lengthMm = 0,
                .widthMm = 0,
                .p = hoop.widestFromThroat.value_or(usual.widestFromThroat),
                .headN = hoop.headExponent.value_or(usual.headExponent),
                .throatN = hoop.throatExponent.value_or(usual.throatExponent)};
    setSize(shape, hoop, usual);
    if (const auto possible = checkSize(shape, hoop); !possible) {
        return tl::unexpected(possible.error());
    }
    if (const auto fitted = fitToMeasuredStrings(shape, request); !fitted) {
        return tl::unexpected(fitted.error());
    }

    StandsOn standsOn = standsOnFor(hoop);
    std::vector<Why> disagreement;
    if (standsOn == StandsOn::Measured && hoop.headAreaCm2) {
        const auto n =
            shapeIsGiven(hoop) ? std::nullopt : exponentOfArea(*hoop.headAreaCm2, shape.lengthMm, shape.widthMm);
        if (n) {
            shape.headN = *n;
            shape.throatN = *n;
            standsOn = StandsOn::MeasuredAndMarked;
        } else if (std::abs(shape.areaCm2() / *hoop.headAreaCm2 - 1) > kMarkedTolerance) {
            disagreement.push_back({Why::Kind::MarkedDisagrees, {}, *hoop.headAreaCm2, shape.areaCm2()});
        }
    }

    FoundOutline found{.outline = {.lengthMm = shape.lengthMm,
                                   .widthMm = shape.widthMm,
                                   .widestFromThroat = shape.p,
                                   .headExponent = shape.headN,
                                   .throatExponent = shape.throatN,
                                   .wallMm = hoop.wallMm.value_or(usualWall(request.sport)),
                                   .areaCm2 = shape.areaCm2(),
                                   .standsOn = standsOn},
                       .why = {}};
    found.why.push_back({Why::Kind::OutlineFrom, std::string(standsOnText(standsOn))});
    found.why.insert(found.why.end(), disagreement.begin(), disagreement.end());
    noteRules(found.why, found.outline, request.sport, hoop.openThroat);
    return found;
}

} // namespace rw::length
