// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace rw {

enum class Material { NaturalGut, Nylon, Multifilament, Polyester, Aramid };

[[nodiscard]] std::string_view materialText(Material material); ///< "natural gut", "nylon", ...
[[nodiscard]] std::optional<Material> materialFromText(std::string_view text);

/// Stretch at 55 lbf of a 1.30 mm string, in percent.
struct StretchRange {
    double low;
    double high;
    [[nodiscard]] double middle() const { return (low + high) / 2; }
    /// The range is taken as two standard deviations either side.
    [[nodiscard]] double standardDeviation() const { return (high - low) / 4; }
};

/// Source: one stringer's bench measurements, published 2014.
[[nodiscard]] StretchRange stretchAt55(Material material);

} // namespace rw
