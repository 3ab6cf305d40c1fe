// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pricing/price_list.h"

#include <tuple>

namespace rw {

namespace {
template<class T>
bool differs(const std::optional<T>& asksFor, const std::optional<T>& wanted) {
    return asksFor && asksFor != wanted;
}

auto particularity(const PriceLine& line) {
    return std::tuple(line.article.has_value(), line.sport.has_value(), line.method.has_value());
}
} // namespace

const PriceLine* PriceList::find(ChargeKind kind, Sport sport, Method method,
                                 const std::optional<StringArticleId>& article, std::string_view label) const {
    const PriceLine* best = nullptr;
    for (const PriceLine& line : lines) {
        if (line.kind != kind || line.label != label || differs(line.sport, std::optional(sport)) ||
            differs(line.method, std::optional(method)) || differs(line.article, article)) {
            continue;
        }
        if (best == nullptr || particularity(line) > particularity(*best)) {
            best = &line;
        }
    }
    return best;
}

} // namespace rw
