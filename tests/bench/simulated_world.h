// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_request.h"

#include <map>
#include <random>
#include <vector>

namespace rw::bench {

/// What is true of the needs of a shop's jobs, which the model only predicts.
struct Truth {
    std::string_view name;
    double geometryOff; ///< every need is this share more than geometry says, beside what the shop itself does
    double freedom;     ///< of the t distribution of frames and jobs; 0 is normal
};

/// One frame of the shop, with its string.
struct SimulatedFrame {
    length::CutRequest request;
    double theta; ///< ln(true need / predicted), of every part, without the shop's bias
};

/// A part of a job that can come short by itself.
enum class JobPart { Mains, Crosses, ShortSide, LongSide };

/// Sixty frames of the three sports and the jobs on them. Each part's true need is what geometry predicts, times
/// exp(the shop's bias for it + the frame's effect + one job's scatter), as the model has it; a world may break that.
class SimulatedWorld {
public:
    SimulatedWorld(const Truth& truth, Method method, unsigned seed);

    [[nodiscard]] const std::vector<SimulatedFrame>& frames() const { return m_frames; }
    /// The frame that comes in next.
    [[nodiscard]] std::size_t nextFrame();
    [[nodiscard]] double needOf(JobPart part, const SimulatedFrame& frame, double predictedMm);
    [[nodiscard]] bool chance(double probability) { return std::bernoulli_distribution(probability)(m_random); }

private:
    [[nodiscard]] double scatter(double sd);
    [[nodiscard]] length::CutRequest frameRequest(Method method, std::size_t number);

    Truth m_truth;
    std::mt19937_64 m_random;
    std::vector<SimulatedFrame> m_frames;
    std::map<JobPart, double> m_bias;
};

} // namespace rw::bench
