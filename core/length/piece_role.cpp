// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/piece_role.h"

namespace rw {

std::string_view pieceRoleText(PieceRole role) {
    switch (role) {
    case PieceRole::Mains:
        return "mains";
    case PieceRole::Crosses:
        return "crosses";
    case PieceRole::Whole:
        return "whole";
    }
    return {};
}

std::optional<PieceRole> pieceRoleFromText(std::string_view text) {
    for (const PieceRole role : {PieceRole::Mains, PieceRole::Crosses, PieceRole::Whole}) {
        if (pieceRoleText(role) == text) {
            return role;
        }
    }
    return std::nullopt;
}

std::string_view methodText(Method method) { return method == Method::TwoPiece ? "two-piece" : "one-piece"; }

std::optional<Method> methodFromText(std::string_view text) {
    for (const Method method : {Method::TwoPiece, Method::OnePiece}) {
        if (methodText(method) == text) {
            return method;
        }
    }
    return std::nullopt;
}

} // namespace rw
