// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace rw {

/// How far a racket has come at the bench. It belongs to the job, so whoever takes it up goes on there. A piece may be
/// cut at any of them.
enum class BenchStep { LookOver, Mains, Crosses, Finish };

[[nodiscard]] std::string_view benchStepText(BenchStep step); ///< "look-over", "mains", "crosses", "finish"
[[nodiscard]] std::optional<BenchStep> benchStepFromText(std::string_view text);

/// The step after, and the one before; nothing at the end of the row.
[[nodiscard]] std::optional<BenchStep> stepAfter(BenchStep step);
[[nodiscard]] std::optional<BenchStep> stepBefore(BenchStep step);

} // namespace rw
