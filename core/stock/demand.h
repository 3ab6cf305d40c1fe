// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

namespace rw::stock {

/// What is known of how many jobs a day want a string: a gamma distribution of the rate, whose past fades (Harvey and
/// Fernandes, "Time series models for count or qualitative observations", 1989; Snyder, Ord and Beaumont, "Forecasting
/// the intermittent demand for slow-moving inventories", 2012). Half of what a day tells is forgotten after 90 days.
class Demand {
public:
    /// Before the string's own history counts: a shape of 0.5 about what strings like it sell. Precondition: the rate,
    /// in jobs a day, is positive.
    [[nodiscard]] static Demand likeOthers(double jobsPerDay);

    /// One more day has gone by; a day without jobs tells something too. `jobs` is not negative; halves count.
    void addDay(double jobs);

    [[nodiscard]] double shape() const { return kPriorShape + m_jobs; }  ///< a
    [[nodiscard]] double days() const { return m_priorDays + m_days; }   ///< b
    [[nodiscard]] double jobsPerDay() const { return shape() / days(); } ///< the mean

private:
    static constexpr double kPriorShape = 0.5;
    explicit Demand(double priorDays)
        : m_priorDays(priorDays) {}
    double m_priorDays;
    double m_jobs = 0;
    double m_days = 0;
};

/// How the days of several strings clump: the variance of a day's jobs over their mean, pooled, at least 1. Team days
/// bring rackets together. Each row has some weeks of one string: over longer times the seasons would count as
/// clumping.
[[nodiscard]] double dailyRatio(std::span<const std::vector<double>> rows);

/// The chance of at most `jobs` jobs (not negative) in `days` days (positive): negative binomial with mean a t/b, made
/// wider by days that clump (`dailyRatio` >= 1; 1 is the predictive distribution itself).
[[nodiscard]] double chanceOfAtMost(double jobs, const Demand& demand, double days, double dailyRatio = 1);

/// After how many days the string has run out with chance `p` (in 0 to 1), when `jobsLeft` whole jobs are left.
/// Clumping is left out, which widens the near end a little.
[[nodiscard]] double runOutDay(const Demand& demand, int jobsLeft, double p);

} // namespace rw::stock
