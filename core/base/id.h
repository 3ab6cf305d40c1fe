// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>

namespace rw {

/// The number of one row of one kind. A customer's id is not a job's id, and there is no empty id:
/// what may be absent is a std::optional.
template<class Kind>
class Id {
public:
    [[nodiscard]] static constexpr Id of(std::int64_t value) { return Id(value); }
    [[nodiscard]] constexpr std::int64_t value() const { return m_value; }
    constexpr auto operator<=>(const Id&) const = default;

private:
    explicit constexpr Id(std::int64_t value)
        : m_value(value) {}
    std::int64_t m_value;
};

using CustomerId = Id<struct CustomerKind>;
using RacketId = Id<struct RacketKind>;
using FrameModelId = Id<struct FrameModelKind>;
using StringArticleId = Id<struct StringArticleKind>;
using SupplierId = Id<struct SupplierKind>;
using DeliveryId = Id<struct DeliveryKind>;
using LotId = Id<struct LotKindTag>;
using MovementId = Id<struct MovementKind>;
using JobId = Id<struct JobKind>;
using JobPieceId = Id<struct JobPieceKind>;
using AttemptId = Id<struct AttemptKind>;
using JobEventId = Id<struct JobEventKindTag>;
using PaymentId = Id<struct PaymentKind>;
using WeighingId = Id<struct WeighingKind>;
using StockTakeId = Id<struct StockTakeKind>;
using StaffId = Id<struct StaffKind>;
using MachineId = Id<struct MachineKind>;

} // namespace rw

template<class Kind>
struct std::hash<rw::Id<Kind>> {
    std::size_t operator()(const rw::Id<Kind>& id) const noexcept { return std::hash<std::int64_t>{}(id.value()); }
};
