// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/bench_step.h"

#include "core/base/named_texts.h"

namespace rw {

namespace {
constexpr NamedTexts<BenchStep, 4> kSteps({{{BenchStep::LookOver, "look-over"},
                                            {BenchStep::Mains, "mains"},
                                            {BenchStep::Crosses, "crosses"},
                                            {BenchStep::Finish, "finish"}}});
} // namespace

std::string_view benchStepText(BenchStep step) { return kSteps.text(step); }
std::optional<BenchStep> benchStepFromText(std::string_view text) { return kSteps.value(text); }

std::optional<BenchStep> stepAfter(BenchStep step) {
    return step == BenchStep::Finish ? std::nullopt : std::optional(static_cast<BenchStep>(static_cast<int>(step) + 1));
}

std::optional<BenchStep> stepBefore(BenchStep step) {
    return step == BenchStep::LookOver ? std::nullopt
                                       : std::optional(static_cast<BenchStep>(static_cast<int>(step) - 1));
}

} // namespace rw
