// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/sport.h"
#include "core/length/piece_role.h"
#include "core/stock/movement.h"
#include "core/strings/material.h"
#include "core/units/tension.h"

#include <span>
#include <string_view>

// What the invented shop consists of, as tables. Lengths are millimetres, prices pence, tensions as somebody would
// type them, times minutes after midnight; "" where there is nothing. Rows name one another by what people call them.
namespace rw::desk::demo {

struct MachineRow {
    std::string_view name;
    TensionUnit unit;
    int stepHundredths;
};

struct StringRow {
    std::string_view code, name, colour;
    Sport sport;
    Material material;
    int diameterMicrometres;
    std::string_view gauge;
    int milligramsPerMetre;
    int fullBed;
    int halfBed; ///< 0: not sold by the half
};

struct FrameRow {
    std::string_view name;
    Sport sport;
    double lengthMm, widthMm, areaCm2; ///< 0: not measured, not marked
    bool openThroat;
    int mains, crosses;
    double mainsSpanMm, crossesSpanMm;
    HoopEnd mainsStart;
    std::string_view lowest, highest;
    std::string_view forcedRight; ///< the reason
};

struct UsualRow {
    std::string_view frame;
    PieceRole role;
    std::string_view string; ///< for its material; "": any
    std::string_view route;
    int cut;
    int shortSide;
};

struct LotRow {
    std::string_view tag, string;
    int length;
    int price, shipping;
    int openDaysAgo; ///< 0: on the first day, taken over from the notebook
    std::string_view batch;
    std::string_view supplier = {}; ///< "": not with a delivery
};

struct PersonRow {
    std::string_view name, phone, email;
};

struct RacketRow {
    std::string_view key; ///< what the tables below call it
    std::string_view person, frame, mark;
};

/// A length that was cut and lost before the one that held.
struct LossRow {
    PieceRole role = PieceRole::Whole;
    int cut = 0; ///< 0: nothing was lost
    LostReason reason = LostReason::Other;
};

struct JobRow {
    int openDaysAgo; ///< when it came in; kOnEarlierTwentieth for the one job from before these weeks
    int minute;
    std::string_view racket;
    std::string_view mains, crosses;
    Method method;
    std::string_view mainsTension, crossesTension;
    std::string_view mainsLot, crossesLot; ///< cut from; "" crosses: the same lot. Of a job that waits
                                           ///< the lot that was chosen for it, "": none
    std::string_view stringer, machine;
    std::string_view note;
    LossRow loss = {};
};
constexpr int kOnEarlierTwentieth = -1;

constexpr std::string_view kCounterStaff = "Oriel Tamm";
constexpr std::string_view kOwner = "Marguerite Dossan";
constexpr int kLabour = 1400;
constexpr int kOwnStringLabour = 1600;
constexpr int kRush = 500;
constexpr int kGrommetTube = 50;
constexpr int kGrommetTubeCost = 18; ///< what one costs the shop
constexpr std::int64_t kFirstOpenNumber = 2120; ///< what the tag on the first waiting racket says
constexpr int kOnTheRack = 4;                   ///< so many of the newest past jobs are still to be collected

[[nodiscard]] std::span<const std::string_view> staff();
[[nodiscard]] std::span<const MachineRow> machines();
[[nodiscard]] std::span<const StringRow> strings();
[[nodiscard]] std::span<const FrameRow> frames();
[[nodiscard]] std::span<const UsualRow> usualCuts();
[[nodiscard]] std::span<const LotRow> lots();
[[nodiscard]] std::span<const PersonRow> people();
[[nodiscard]] std::span<const RacketRow> rackets();
[[nodiscard]] std::span<const JobRow> pastJobs(); ///< strung, oldest first
[[nodiscard]] std::span<const JobRow> openJobs(); ///< waiting, in order

} // namespace rw::desk::demo
