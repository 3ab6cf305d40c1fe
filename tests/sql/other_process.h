// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

namespace rw::sql::test {

/// Runs `work` in a process of its own and gives back what it gave; an exception comes back as "threw: ...".
[[nodiscard]] std::string inOtherProcess(const std::function<std::string()>& work);

/// The same, as a user who may do nothing special. Root may write a read-only file, so a test run by root would prove
/// nothing about permissions. `folder` is given to that user first, with everything in it.
[[nodiscard]] std::string asPlainUser(const std::string& folder, const std::function<std::string()>& work);

} // namespace rw::sql::test
