// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cut_input.h"

#include "app/cli/file_input.h"
#include "core/exchange/cut_json.h"

namespace rw::cli {

Result<PlannedInput> planInput(const std::string& path) {
    const auto bytes = readInput(path);
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    auto request = exchange::cutRequestFromJson(*bytes);
    if (!request) {
        return tl::unexpected(request.error());
    }
    auto plan = length::planCut(*request);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    return PlannedInput{*std::move(request), *std::move(plan)};
}

} // namespace rw::cli
