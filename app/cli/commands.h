// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/command.h"

#include <vector>

namespace rw::cli {

[[nodiscard]] const std::vector<Command>& commands();

[[nodiscard]] Result<Answer> runDay(const Given& given);
[[nodiscard]] Result<Answer> runCheck(const Given& given);
[[nodiscard]] Result<Answer> runDemo(const Given& given);
[[nodiscard]] Result<Answer> runStock(const Given& given);
[[nodiscard]] Result<Answer> runHistory(const Given& given);
[[nodiscard]] Result<Answer> runBooks(const Given& given);
[[nodiscard]] Result<Answer> runExport(const Given& given);
[[nodiscard]] Result<Answer> runCard(const Given& given);
[[nodiscard]] Result<Answer> runCut(const Given& given);
[[nodiscard]] Result<Answer> runDraw(const Given& given);
[[nodiscard]] Result<Answer> runPlan(const Given& given);
[[nodiscard]] Result<Answer> runLearn(const Given& given);
[[nodiscard]] Result<Answer> runForecast(const Given& given);
[[nodiscard]] Result<Answer> runWeigh(const Given& given);
[[nodiscard]] Result<Answer> runOrder(const Given& given);

} // namespace rw::cli
