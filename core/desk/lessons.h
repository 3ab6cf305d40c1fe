// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/told_needs.h"

#include <string>
#include <vector>

// What the ledger has taught the length model, for who wants to look.
namespace rw::desk {

/// How far all frames of a sport are off in one part of a job: the shop's own tape, reach and knots.
struct PartLesson {
    Sport sport;
    PieceRole role;
    bool shortSide;
    int cuts;            ///< measured ones, on which the bias stands
    int groups;          ///< of so many frames and materials
    length::Belief bias; ///< of ln(need / prediction)
};

/// What a frame does in one part of a job with one material.
struct FrameLesson {
    std::string frame;
    Sport sport;
    NeedGroup group;
    int cuts;     ///< all that tell
    int measured; ///< with tails told
    int cameShort;
    length::Belief bias; ///< by the other groups alone
    double effect;       ///< what the frame adds to it: the mean of theta less that of the bias
    double sd;           ///< of theta
};

struct Lessons {
    std::vector<PartLesson> parts;   ///< by sport, part
    std::vector<FrameLesson> frames; ///< by sport, frame, part, material
};

/// How many of a frame's newest jobs are looked at: more than any frame sees in years, and an end to the work.
constexpr int kJobsOfFrameInLessons = 500;

/// From every frame's newest jobs. Takes as long as the ledger is long: nothing for a station that somebody waits at.
[[nodiscard]] Result<Lessons> lessons(Transaction& ledger);

/// What is told of one frame in all its parts, newest first.
[[nodiscard]] std::vector<ToldNeed> toldOfFrame(Transaction& ledger, const FrameModel& frame,
                                                const std::vector<StringArticle>& articles,
                                                const ShopSettings& settings);

} // namespace rw::desk
