// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/simulated_world.h"

#include <cmath>

namespace rw::bench {

namespace {
constexpr std::size_t kFrames = 60;
}

SimulatedWorld::SimulatedWorld(const Truth& truth, Method method, unsigned seed)
    : m_truth(truth)
    , m_random(seed) {
    for (const JobPart part : {JobPart::Mains, JobPart::Crosses, JobPart::ShortSide}) {
        m_bias[part] = std::normal_distribution<double>(0, length::kShopSpread)(m_random);
    }
    // Both sides of one piece are one string by the same hands.
    m_bias[JobPart::LongSide] = m_bias[JobPart::ShortSide];
    for (std::size_t i = 0; i < kFrames; ++i) {
        m_frames.push_back({frameRequest(method, i), scatter(length::kFrameSpread)});
    }
}

std::size_t SimulatedWorld::nextFrame() {
    return std::uniform_int_distribution<std::size_t>(0, m_frames.size() - 1)(m_random);
}

double SimulatedWorld::needOf(JobPart part, const SimulatedFrame& frame, double predictedMm) {
    const double r = m_bias[part] + frame.theta + scatter(length::kJobSpread);
    return predictedMm * (1 + m_truth.geometryOff) * std::exp(r);
}

double SimulatedWorld::scatter(double sd) {
    if (m_truth.freedom <= 0) {
        return std::normal_distribution<double>(0, sd)(m_random);
    }
    // Of the same standard deviation, with more far out.
    const double scale = sd * std::sqrt((m_truth.freedom - 2) / m_truth.freedom);
    return scale * std::student_t_distribution<double>(m_truth.freedom)(m_random);
}

length::CutRequest SimulatedWorld::frameRequest(Method method, std::size_t number) {
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    };
    // Of ten frames six are tennis, two squash, two badminton.
    const std::size_t kind = number % 10;
    const Sport sport = kind < 6 ? Sport::Tennis : (kind < 8 ? Sport::Squash : Sport::Badminton);
    length::CutRequest request = length::defaultRequest(sport);
    request.method = method;
    if (sport == Sport::Tennis) {
        const double width = between(238, 254);
        request.hoop.widthMm = width;
        request.hoop.lengthMm = width * between(1.32, 1.37);
        if (kind == 5) {
            request.pattern.mains = 18;
            request.pattern.crosses = 20;
        }
        constexpr Material kMaterials[] = {Material::Nylon, Material::Multifilament, Material::Polyester};
        request.mains.material = kMaterials[number / 10 % 3];
    } else if (sport == Sport::Squash) {
        request.hoop.openThroat = kind == 7;
    } else {
        request.mains.material = Material::Multifilament;
    }
    request.crosses.material = request.mains.material;
    return request;
}

} // namespace rw::bench
