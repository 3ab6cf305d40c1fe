// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/desk/unit_of_work.h"

#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>

// The invented shop that the stories happen in: Harbour Lane Strings, open 10 to 18, Monday to Saturday, in London.
namespace rw::stories {

/// What a refusal says, for a test's output.
[[nodiscard]] std::string describe(const Refusal& refusal);

/// The value of a result that a story counts on; a refusal ends the story.
template<class T>
T must(Result<T> result) {
    if (!result) {
        throw std::runtime_error("refused: " + describe(result.error()));
    }
    if constexpr (!std::is_void_v<T>) {
        return *std::move(result);
    }
}

template<class Work>
auto tryWrite(desk::Ledger& ledger, Work&& work) {
    return desk::inTransaction(ledger, desk::Access::Write, std::forward<Work>(work));
}
template<class Work>
auto write(desk::Ledger& ledger, Work&& work) {
    return must(tryWrite(ledger, std::forward<Work>(work)));
}
template<class Work>
auto read(desk::Ledger& ledger, Work&& work) {
    return must(desk::inTransaction(ledger, desk::Access::Read, std::forward<Work>(work)));
}

[[nodiscard]] constexpr Length mm(std::int64_t value) { return Length::fromMillimetres(value); }
[[nodiscard]] Money pounds(std::int64_t pence);
[[nodiscard]] Tension lb(double pounds); ///< halves and tenths
[[nodiscard]] Tension kg(double kilograms);
/// A moment on the shop's wall clock.
[[nodiscard]] Instant at(CivilDate date, std::chrono::minutes time);

struct HarbourLane {
    StaffId oriel;
    StaffId bastian;
    MachineId benchA;
    MachineId benchB;
    StringArticleId kestrelline;
    StringArticleId larkspun;
    StringArticleId tarnweave;
    StringArticleId swiftlet;
    FrameModelId aldermoor98;
    FrameModelId corranDrop;
    FrameModelId tarnRidge;
    FrameModelId pellowFeather;

    [[nodiscard]] By counter(Instant when) const { return {oriel, "counter", when}; }
    [[nodiscard]] By bench(Instant when) const { return {bastian, "bench", when}; }
    [[nodiscard]] By stockroom(Instant when) const { return {bastian, "stockroom", when}; }
};

/// Settles the shop in an empty ledger: people, machines, strings, prices, frames and their usual cuts. No lot, no
/// customer, no job.
[[nodiscard]] HarbourLane settle(desk::Transaction& ledger);

/// A lot received at `nominal` and, if it holds less by now, measured down to `left`.
[[nodiscard]] LotId putOnShelf(desk::Transaction& ledger, const HarbourLane& shop, std::string tag,
                               StringArticleId article, Length nominal, Length left, Instant when);
[[nodiscard]] CustomerId customer(desk::Transaction& ledger, std::string name, std::string phone = {});
[[nodiscard]] RacketId racket(desk::Transaction& ledger, CustomerId owner, FrameModelId frame, std::string mark = {});
[[nodiscard]] Lot lotTagged(desk::Transaction& ledger, std::string_view tag);

} // namespace rw::stories
