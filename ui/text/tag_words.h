// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/tagged_job.h"

#include <QString>

#include <cstdint>
#include <optional>

// A tag's number that was typed or scanned.
namespace rw::ui {

[[nodiscard]] QString tagTypedText(const QString& digits); ///< "tag 21 ▸ Enter looks for it"
[[nodiscard]] QString notInThisListText(std::int64_t number);
/// Why the bench has no card for it; `state` nothing: no job has that number.
[[nodiscard]] QString notAtTheBenchText(std::int64_t number, const std::optional<JobState>& state);
[[nodiscard]] QString taggedTitle(const desk::TaggedJob& tagged);  ///< "tag 2121: Petra Lindobi"
[[nodiscard]] QString taggedDetail(const desk::TaggedJob& tagged); ///< "Aldermoor 98 A, ✓ strung"

} // namespace rw::ui
