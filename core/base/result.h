// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"

#include <tl/expected.hpp>

namespace rw {

/// A value, or the reason it was refused. Never ignored silently.
template<class T>
class [[nodiscard]] Result : public tl::expected<T, Refusal> {
public:
    using tl::expected<T, Refusal>::expected;
    // Deliberately implicit: lets the monadic operations of the base be returned as they are.
    Result(tl::expected<T, Refusal> base) // NOLINT(google-explicit-constructor)
        : tl::expected<T, Refusal>(std::move(base)) {}
};

template<>
class [[nodiscard]] Result<void> : public tl::expected<void, Refusal> {
public:
    using tl::expected<void, Refusal>::expected;
    Result() = default;
    Result(tl::expected<void, Refusal> base) // NOLINT(google-explicit-constructor)
        : tl::expected<void, Refusal>(std::move(base)) {}
};

/// `return refuse(Code::Missing, {{"what", "name"}});`
[[nodiscard]] inline tl::unexpected<Refusal> refuse(Code code, std::vector<Argument> arguments = {}) {
    return tl::unexpected<Refusal>(Refusal(code, std::move(arguments)));
}

} // namespace rw
