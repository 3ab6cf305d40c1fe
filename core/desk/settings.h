// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/promise.h"
#include "core/desk/port/ledger.h"
#include "core/frames/sport.h"
#include "core/money/money.h"
#include "core/units/length.h"
#include "core/units/mass.h"

#include <array>
#include <chrono>
#include <cstdint>
#include <optional>
#include <string_view>

// The shop's settings: what they are called in the ledger, and what they mean.
namespace rw::desk {

namespace setting {
constexpr std::string_view kShopName = "shop-name";
constexpr std::string_view kTimeZone = "time-zone"; ///< IANA name
/// "10:00-18:00", "" when closed; Monday first.
constexpr std::array<std::string_view, 7> kHours = {"hours.mon", "hours.tue", "hours.wed", "hours.thu",
                                                    "hours.fri", "hours.sat", "hours.sun"};
constexpr std::string_view kClosedDays = "closed-days"; ///< "2026-12-25 2026-12-26"
constexpr std::string_view kMinutesPerJob = "minutes.per-job";
constexpr std::string_view kMarginPercent = "promise.margin-percent";
constexpr std::string_view kStepMinutes = "promise.step-minutes";
constexpr std::string_view kRunningShortJobs = "running-short.jobs";
constexpr std::string_view kTapeStepMm = "tape-step-mm";
constexpr std::string_view kCeilingPercent = "ceiling-percent"; ///< chance of a spoiled job that is accepted
/// The number of the first job, for a shop whose tags go on from its old book; else the ledger begins with 1001.
constexpr std::string_view kFirstJobNumber = "job-number.first";
constexpr std::string_view kLabourRate = "labour.rate-per-hour"; ///< "24.00": what an hour of work is worth; "": nobody has said
constexpr std::string_view kOwnerPin = "owner.pin-hash";         ///< as core/owner makes it; "" or nothing: no PIN
constexpr std::string_view kShortSide = "short-side";            ///< "left" or "right", where nothing else decides
/// How much higher the crosses are when one number is said for badminton: "2 lb", "10 %"; not set: not at all.
constexpr std::string_view kBadmintonCrosses = "badminton.crosses-higher";
/// The shop's own words for the informed yes to a pull above the marked maximum; not set: those of the program.
constexpr std::string_view kAboveMarkedWords = "above-marked.words";
/// "12.50": what a job that must be strung again costs beyond its string; "" when nobody has said.
constexpr std::string_view kSpoiledJobCost = "spoiled-job.cost";
/// "1": the step in which the stockroom's scale shows grams.
constexpr std::string_view kScaleStep = "scale-step-g";
} // namespace setting

/// The settings as values. What is not stored, or stored unreadably, has its default.
struct ShopSettings {
    OpeningHours hours; ///< Monday to Saturday 10 to 18
    int marginPercent = 15;
    std::chrono::minutes step{15};
    std::chrono::minutes minutesPerJob{25};
    std::optional<Money> labourRate = std::nullopt; ///< of an hour, more than nothing
    int runningShortJobs = 2;
    Length tapeStep = Length::fromMillimetres(50);
    double ceiling = 0.01;
    Side shortSide = Side::Left;
    std::optional<Money> spoiledJobCost;
    Mass scaleStep = Mass::fromMilligrams(1'000);
    Length reach = Length::fromMillimetres(300); ///< the longest of the shop's machines: a cut serves whichever is free
};

/// The number that the next job must have: the first of a shop that set one; 0 when the ledger counts on.
[[nodiscard]] std::int64_t nextJobNumber(Transaction& ledger);

/// The machines that are not retired, by name.
[[nodiscard]] std::vector<Machine> machinesInUse(Shop& shop);

/// A shop that never opens could promise nothing, so a week without any hours counts as not set.
[[nodiscard]] ShopSettings readSettings(Shop& shop);
/// The same hours, for who asks for nothing else.
[[nodiscard]] OpeningHours openingHours(Shop& shop);
/// What day it is in the shop.
[[nodiscard]] CivilDate today(Shop& shop, Instant now);

/// Who strings in those hours, and at how many machines: what a promise is made from. A shop that has named nobody who
/// strings has somebody at each machine.
[[nodiscard]] Workshop workshopOf(Shop& shop, const ShopSettings& settings);

} // namespace rw::desk
