// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_request.h"
#include "core/length/packet.h"

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace rw::length {

/// The name under which a plan tells a route that the request wrote out.
constexpr std::string_view kOwnRoute = "own route";

/// Where the outline comes from, best first. Of a length or a width alone the other one is the sport's.
enum class StandsOn { Measured, MeasuredAndMarked, Marked, LengthMeasured, WidthMeasured, SportOnly };

/// "measured", "measured and marked", "marked", "length measured", "width measured", "sport only".
[[nodiscard]] std::string_view standsOnText(StandsOn standsOn);

/// The hoop as it was used: |x/b|^n + |(y - widestY)/a|^n = 1, origin in the middle, y toward the head.
struct Outline {
    double lengthMm;
    double widthMm;
    double widestFromThroat; ///< p
    double headExponent;
    double throatExponent;
    double wallMm;
    double areaCm2;
    StandsOn standsOn;
};

enum class RunsTo { Head, Throat, Left, Right };

struct LaidString {
    StringId id;
    RunsTo to;
    double chordMm;
    Point from;        ///< on the inner edge, where the string enters
    Point end;         ///< where it leaves
    double wallMm = 0; ///< of the hoop at both ends
};

/// One run of string from where the piece starts to one of its ends, in the order it is laid.
struct Arm {
    Side side; ///< which side of the frame its mains are on; for crosses, where it begins
    std::vector<LaidString> strings;
    HoopEnd endsAtEnd;                            ///< which half of the hoop the arm comes out of
    Side endsAtSide;                              ///< and on which side
    [[nodiscard]] std::string endsAtText() const; ///< "head, left"
    double pathMm;                                ///< chords, walls, its links (half of a shared centre loop), crimp
};

/// What of a one-piece job is measured off before the first string is pulled.
struct ShortSide {
    Side side;
    double needMm;          ///< the median, reach included, with what the shop's own cuts said
    Length measure;         ///< what to measure: its own safe length, on the tape
    double headLengths;     ///< measure in head lengths of this frame
    double predictedMm = 0; ///< by the head's measurements alone
    double chanceShort = 0; ///< P(it needs more than what is measured)
    int observations = 0;   ///< how many of the shop's own cuts it stands on
};

/// Lengths that the need does not exceed in so many jobs of a hundred.
struct NeedQuantiles {
    double p50;
    double p90;
    double p99;
};

struct PiecePlan {
    PieceRole role;
    std::vector<Arm> arms; ///< of a one-piece job the short side first
    double chordsMm;
    double wallsMm;
    double linksMm;
    double crimpMm;
    double pathMm;
    double stretchPercent;
    double endsMm;
    double predictedMm; ///< by the head's measurements alone
    double needMm;      ///< the median, with what the shop's own cuts said
    double needSdLog;   ///< standard deviation of ln(need): shop, frame, material and one job's scatter
    double needSdMm;
    NeedQuantiles quantilesMm;
    int observations; ///< how many of the shop's own cuts it stands on
    int measured = 0; ///< of how many of them the tails were told
    /// How far the need lies from its prediction, as a logarithm: what the rest of the shop says, from so many
    /// measured cuts, and what this frame adds to that.
    double shopBias = 0;
    int shopCuts = 0;
    double frameEffect = 0;
    Length cut = Length::fromMillimetres(0);
    double chanceShort; ///< P(need > cut); of a one-piece job, that either side comes short of its share
    bool heldAtPacket;  ///< the cut was held at the sport's usual packet
    std::optional<ShortSide> shortSide;
};

/// How a packet or a customer's own string becomes the pieces of a job.
enum class SetUse {
    Halved,       ///< folded in the middle
    MainsAndRest, ///< the mains are measured as from a reel, or as the set allows; the crosses get the rest
    Whole         ///< one piece
};

[[nodiscard]] std::string_view setUseText(SetUse use); ///< "halved", "mains and rest", "whole"

struct SetWay {
    SetUse use;
    std::vector<Length> shares; ///< mains and crosses, or short side and long side
    double chanceWorst;         ///< that the worse-off share is short
};

/// One piece in place of two.
struct SetAlternative {
    std::string route;
    double needMm;
    double chanceNotEnough;
};

struct SetJudgement {
    Length length;
    PacketVerdict verdict;    ///< by the chances below: not enough only where a clamp does not bring it to a quarter
    double chanceNotEnough;   ///< that the job needs more than the set
    Length enoughFrom;        ///< the shortest set that would be called enough
    double chanceWithClamp;   ///< when a starting clamp and a bridge string save the last reach
    std::vector<SetWay> ways; ///< the one that is proposed first
    std::optional<SetAlternative> alternative; ///< where the set is not called enough, and one piece needs less
};

/// One reason, for people: a code and its numbers; ui/text makes the sentence.
struct Why {
    enum class Kind {
        OutlineFrom,     ///< text: of standsOnText
        MarkedDisagrees, ///< the marked size disagrees with the tape: value = marked cm2, other = tape's
        LargerThanRules, ///< text: which measure; value, other = the rule's limit
        RouteChosen,     ///< text: route name
        StartEndAssumed, ///< text: head or throat, the one the route needs
        TwoTopCrosses,   ///< why k top crosses on the short side: value = k
        GeometryOnly,    ///< never strung here: from the head's measurements; text: which piece, "" for all
        OwnJobs,         ///< text: piece; value = how many of the shop's own cuts, other = measured ones among them
        OwnNeeds,        ///< text: piece; value, other = the least and the most that the measured ones needed, mm
        Corrected,       ///< text: piece; value = what geometry predicts, other = what the shop's own cuts make of it
        ShopBias,    ///< text: piece; value = how far in % the rest of the shop is off, other = its measured cuts
        FrameEffect, ///< text: piece; value = what this frame adds to that, in %
        HeldAtPacket,      ///< value = packet mm, other = the model's own cut
        AbovePacket,       ///< value = cut mm, other = packet mm
        LeastCost,         ///< the cut with the least expected cost: value = cost
        CeilingDecides,    ///< value = ceiling per piece
        SetJudged,         ///< text: enough, tight, not enough; value = set mm, other = chance that the job needs more
        SetUsed,           ///< text: how; value = the first share mm, other = chance of the worse-off share
        SetSaferInOne,     ///< text: route of one piece; value = its need mm, other = chance that it needs more
        SetSaferWithClamp, ///< value = reach mm, other = chance of coming short by more than that
        SetEnoughFrom,     ///< value = mm
        CrossesFromThroat, ///< a caution: the maker's word is needed
        LongOutsideRun     ///< text: "7R to X2"; value = the run outside the hoop in mm, other = what is usual at
                           ///< most
    };
    Kind kind;
    std::string text = {};
    double value = 0;
    double other = 0;
};

struct CutPlan {
    Outline hoop;
    Method method;
    std::string route;   ///< "" for two pieces, kOwnRoute for a written one
    HoopEnd mainsStart;  ///< as known, or the end that the route needs
    double headLengthMm; ///< the longest main and one wall: inside of one end to outside of the other
    double headWidthMm;
    std::vector<PiecePlan> pieces;
    double chanceShortJob;
    std::optional<SetJudgement> set = {}; ///< where the request has one
    std::vector<Why> why;
};

/// The cut plan of a job. Refusals: ImpossibleValue {key, text, expected} with the key as in a cut request
/// file
/// ("hoop.lengthMm"), RouteUnknown {route, known}, RouteDoesNotFit {route, reason, fits, mainsASide,
/// mainsStart, mainsFinish} as told in route_choice.h. A start end that nobody knows is never refused. Pure,
/// thread-safe. Of the finished pieces it tells the same, with keys from "evidence[0]" on; of a written route, from
/// "ownRoute" on; of places, from "points" on.
[[nodiscard]] Result<CutPlan> planCut(const CutRequest& request);

/// What a part of a job needs by geometry alone: what a finished piece is held against.
struct PredictedPart {
    PieceRole role;
    bool shortSide;
    double needMm;
    double backMm; ///< what the machine gives back at its pulled ends: the reach less what stays in the knots
    double materialSpread; ///< how well the material's stretch is known, a share of the need
};
/// The parts of a job: its pieces, and of a one-piece job the short side too. Refuses what planCut refuses, evidence
/// aside. Pure, thread-safe.
[[nodiscard]] Result<std::vector<PredictedPart>> predictParts(const CutRequest& request);

} // namespace rw::length
