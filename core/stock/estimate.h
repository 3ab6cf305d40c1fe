// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace rw::stock {

/// A value and how sure it is: one standard deviation.
struct Estimate {
    double value;
    double sd;
};

/// What two independent estimates of one thing say together: their mean, weighted by their precisions. One that is
/// sure (sd 0) is taken as it is.
[[nodiscard]] Estimate combined(const Estimate& one, const Estimate& other);

} // namespace rw::stock
