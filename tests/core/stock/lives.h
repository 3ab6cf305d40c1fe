// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/movement.h"

#include <vector>

namespace rw::stock::test {

inline Instant minute(int minutes) { return Instant(std::chrono::minutes(minutes)); }

/// The life of one lot, one movement a minute.
class Life {
public:
    MovementId add(MovementReason reason, std::int64_t mm, std::optional<MovementId> corrects = std::nullopt) {
        const auto id = MovementId::of(static_cast<std::int64_t>(m_movements.size()) + 1);
        m_movements.push_back({.id = id,
                               .lot = LotId::of(1),
                               .reason = reason,
                               .change = Length::fromMillimetres(mm),
                               .attempt = std::nullopt,
                               .lostReason = std::nullopt,
                               .corrects = corrects,
                               .by = {StaffId::of(1), "stockroom", minute(static_cast<int>(m_movements.size()))}});
        return id;
    }
    [[nodiscard]] const std::vector<Movement>& movements() const { return m_movements; }

private:
    std::vector<Movement> m_movements;
};

} // namespace rw::stock::test
