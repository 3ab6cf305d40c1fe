// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace rw::sql {

/// Why an update that names a version met no row: the row is not there, or somebody else changed it.
template<class Named>
[[nodiscard]] tl::unexpected<Refusal> staleRow(std::string_view what, const Named& mine,
                                               const std::optional<Named>& theirs) {
    if (!theirs) {
        return refuse(Code::NotFound, {{"what", std::string(what)}, {"text", mine.name}});
    }
    return refuse(Code::ChangedMeanwhile, {{"what", std::string(what)}, {"mine", mine.name}, {"theirs", theirs->name}});
}

} // namespace rw::sql
