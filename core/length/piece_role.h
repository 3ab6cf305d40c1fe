// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace rw {

/// What a piece of string is for: the mains or the crosses of a two-piece job, or the whole of a one-piece job.
enum class PieceRole { Mains, Crosses, Whole };

[[nodiscard]] std::string_view pieceRoleText(PieceRole role); ///< "mains", "crosses", "whole"
[[nodiscard]] std::optional<PieceRole> pieceRoleFromText(std::string_view text);

/// What is measured off a one-piece job before its first string is pulled; it is no piece of its own.
constexpr std::string_view kShortSideText = "short side";

enum class Method { TwoPiece, OnePiece };

[[nodiscard]] std::string_view methodText(Method method); ///< "two-piece", "one-piece"
[[nodiscard]] std::optional<Method> methodFromText(std::string_view text);

} // namespace rw
