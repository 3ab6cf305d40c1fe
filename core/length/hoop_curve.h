// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"

namespace rw::length {

/// The outline as a curve: |x/b|^n + |(y - y_w)/a|^n = 1 with its own a and n above and below the widest
/// place. Millimetres; the origin is the middle of the inside length, x to the right, y toward the head.
class HoopCurve {
public:
    HoopCurve(double lengthMm, double widthMm, double widestFromThroat, double headExponent, double throatExponent);
    explicit HoopCurve(const Outline& outline);

    /// The upper and lower edge at `x`; at and beyond the widest place both are the widest place's y.
    [[nodiscard]] double top(double x) const;
    [[nodiscard]] double bottom(double x) const;
    /// Half the inside width at `y`; 0 at and beyond either tip.
    [[nodiscard]] double halfWidth(double y) const;
    /// 2 b (a_h I(n_h) + a_t I(n_t)) with I(n) = G(1+1/n)^2 / G(1+2/n), in cm2.
    [[nodiscard]] double areaCm2() const;

    /// I(n): the share of its box that a quarter of |u|^n + |v|^n = 1 fills; pi/4 for n = 2.
    [[nodiscard]] static double quarterShare(double exponent);

private:
    double m_b;
    double m_widestY;
    double m_headA;
    double m_throatA;
    double m_headN;
    double m_throatN;
};

} // namespace rw::length
