// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/hoop_curve.h"

#include <cmath>

namespace rw::length {

namespace {
/// v of |u|^n + |v|^n = 1 for u >= 0; 0 from u = 1 on.
double other(double u, double n) {
    if (u >= 1) {
        return 0;
    }
    return n == 2 ? std::sqrt(1 - u * u) : std::pow(1 - std::pow(u, n), 1 / n);
}
} // namespace

HoopCurve::HoopCurve(double lengthMm, double widthMm, double widestFromThroat, double headExponent,
                     double throatExponent)
    : m_b(widthMm / 2)
    , m_widestY(lengthMm * (widestFromThroat - 0.5))
    , m_headA(lengthMm * (1 - widestFromThroat))
    , m_throatA(lengthMm * widestFromThroat)
    , m_headN(headExponent)
    , m_throatN(throatExponent) {}

HoopCurve::HoopCurve(const Outline& outline)
    : HoopCurve(outline.lengthMm, outline.widthMm, outline.widestFromThroat, outline.headExponent,
                outline.throatExponent) {}

double HoopCurve::top(double x) const { return m_widestY + m_headA * other(std::abs(x) / m_b, m_headN); }

double HoopCurve::bottom(double x) const { return m_widestY - m_throatA * other(std::abs(x) / m_b, m_throatN); }

double HoopCurve::halfWidth(double y) const {
    const double up = y - m_widestY;
    return m_b * (up >= 0 ? other(up / m_headA, m_headN) : other(-up / m_throatA, m_throatN));
}

double HoopCurve::areaCm2() const {
    return 2 * m_b * (m_headA * quarterShare(m_headN) + m_throatA * quarterShare(m_throatN)) / 100;
}

double HoopCurve::quarterShare(double exponent) {
    const double side = std::tgamma(1 + 1 / exponent);
    return side * side / std::tgamma(1 + 2 / exponent);
}

} // namespace rw::length
