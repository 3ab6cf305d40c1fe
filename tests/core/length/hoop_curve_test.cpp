// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/hoop_curve.h"

#include <boost/math/quadrature/tanh_sinh.hpp>
#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>

using rw::length::HoopCurve;

namespace {

struct Head {
    double length;
    double width;
    double p;
    double headN;
    double throatN;
};

constexpr Head kHeads[] = {{329, 245, 0.5, 2, 2},     {360, 190, 0.6, 2, 1.5},    {245, 190, 0.5, 2.5, 2},
                           {310, 200, 0.5, 2, 2},     {345, 265, 0.46, 2.3, 1.8}, {300, 160, 0.7, 1.2, 4},
                           {400, 120, 0.3, 3.7, 1.25}};

HoopCurve curveOf(const Head& head) { return {head.length, head.width, head.p, head.headN, head.throatN}; }

/// |x/b|^n + |(y - y_w)/a|^n - 1 as the model writes it: below 0 inside the head.
double equation(const Head& head, double x, double y) {
    const double up = y - head.length * (head.p - 0.5);
    const double a = up >= 0 ? head.length * (1 - head.p) : head.length * head.p;
    const double n = up >= 0 ? head.headN : head.throatN;
    return std::pow(std::abs(x) / (head.width / 2), n) + std::pow(std::abs(up) / a, n) - 1;
}

/// The place between an inner and an outer point where the equation changes sign, by halving.
double edge(double inner, double outer, const std::function<double(double)>& at) {
    for (int i = 0; i < 200; ++i) {
        const double middle = (inner + outer) / 2;
        (at(middle) < 0 ? inner : outer) = middle;
    }
    return inner;
}

double topByHalving(const Head& head, double x) {
    return edge(head.length * (head.p - 0.5), head.length, [&](double y) { return equation(head, x, y); });
}
double bottomByHalving(const Head& head, double x) {
    return edge(head.length * (head.p - 0.5), -head.length, [&](double y) { return equation(head, x, y); });
}
double halfWidthByHalving(const Head& head, double y) {
    return edge(0, head.width, [&](double x) { return equation(head, x, y); });
}

TEST(HoopCurve, AreaAgreesWithNumericIntegration) {
    boost::math::quadrature::tanh_sinh<double> integrator;
    for (const Head& head : kHeads) {
        const auto width = [&](double y) { return 2 * halfWidthByHalving(head, y); };
        const double widest = head.length * (head.p - 0.5);
        const double area = integrator.integrate(width, -head.length / 2, widest) +
                            integrator.integrate(width, widest, head.length / 2);
        EXPECT_NEAR(curveOf(head).areaCm2() / (area / 100), 1, 1e-6) << head.length << " x " << head.width;
    }
}

TEST(HoopCurve, ChordsAgreeWithTheEquationSolvedByHalving) {
    for (const Head& head : kHeads) {
        const HoopCurve curve = curveOf(head);
        for (int i = 0; i < 40; ++i) {
            const double x = head.width / 2 * (i - 20) / 20.5;
            EXPECT_NEAR(curve.top(x), topByHalving(head, x), 0.01);
            EXPECT_NEAR(curve.bottom(x), bottomByHalving(head, x), 0.01);
            const double y = head.length / 2 * (i - 20) / 20.5;
            EXPECT_NEAR(curve.halfWidth(y), halfWidthByHalving(head, y), 0.01);
        }
    }
}

TEST(HoopCurve, TheQuarterOfAnEllipseIsPiOverFour) {
    EXPECT_NEAR(HoopCurve::quarterShare(2), std::numbers::pi / 4, 1e-12);
    EXPECT_NEAR(HoopCurve::quarterShare(1), 0.5, 1e-12); // a straight line across the box
}

TEST(HoopCurve, NothingLiesOutside) {
    const HoopCurve curve = curveOf(kHeads[0]);
    EXPECT_EQ(curve.halfWidth(165), 0);
    EXPECT_EQ(curve.halfWidth(-165), 0);
    EXPECT_EQ(curve.top(123), curve.bottom(123));
}

// A stringer's hoop measurements published 2015: a head of 329 x 245 mm is sold as 98 in2. 10 x 14 in: D.
TEST(HoopCurve, MeasuredHeadsHaveTheSizeTheyAreSoldAs) {
    constexpr double kSquareInch = 6.4516;
    EXPECT_NEAR(HoopCurve(329, 245, 0.5, 2, 2).areaCm2() / kSquareInch, 98.13, 0.02);
    EXPECT_NEAR(HoopCurve(14 * 25.4, 254, 0.5, 2, 2).areaCm2() / kSquareInch, 109.96, 0.02);
    EXPECT_NEAR(HoopCurve(360, 190, 0.6, 2, 1.5).areaCm2(), 496,
                1); // the open-throat head of the model's table
}

} // namespace
