// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strings/material.h"

namespace rw {

std::string_view materialText(Material material) {
    switch (material) {
    case Material::NaturalGut:
        return "natural gut";
    case Material::Nylon:
        return "nylon";
    case Material::Multifilament:
        return "multifilament";
    case Material::Polyester:
        return "polyester";
    case Material::Aramid:
        return "aramid";
    }
    return {};
}

std::optional<Material> materialFromText(std::string_view text) {
    for (const Material material : {Material::NaturalGut, Material::Nylon, Material::Multifilament,
                                    Material::Polyester, Material::Aramid}) {
        if (materialText(material) == text) {
            return material;
        }
    }
    return std::nullopt;
}

StretchRange stretchAt55(Material material) {
    switch (material) {
    case Material::NaturalGut:
        return {6, 7};
    case Material::Nylon:
        return {9, 10};
    case Material::Multifilament:
        return {10, 12};
    case Material::Polyester:
        return {3, 4};
    case Material::Aramid:
        return {1, 2};
    }
    return {0, 0};
}

} // namespace rw
