// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cut_json.h"

#include "core/exchange/json_text.h"
#include "core/length/route.h"

namespace rw::exchange {

namespace {
using length::Arm;
using length::CutPlan;
using length::LaidString;
using length::Outline;
using length::PiecePlan;
using length::Why;
using Shape = JsonText::Shape;

/// The kinds as files know them; they stay as they are when sentences change.
std::string_view kindName(Why::Kind kind) {
    switch (kind) {
    case Why::Kind::OutlineFrom:
        return "outline-from";
    case Why::Kind::MarkedDisagrees:
        return "marked-disagrees";
    case Why::Kind::LargerThanRules:
        return "larger-than-rules";
    case Why::Kind::RouteChosen:
        return "route-chosen";
    case Why::Kind::StartEndAssumed:
        return "start-end-assumed";
    case Why::Kind::TwoTopCrosses:
        return "top-crosses-on-short-side";
    case Why::Kind::GeometryOnly:
        return "geometry-only";
    case Why::Kind::OwnJobs:
        return "own-jobs";
    case Why::Kind::OwnNeeds:
        return "own-needs";
    case Why::Kind::Corrected:
        return "corrected";
    case Why::Kind::ShopBias:
        return "shop-bias";
    case Why::Kind::FrameEffect:
        return "frame-effect";
    case Why::Kind::SetJudged:
        return "set-judged";
    case Why::Kind::SetUsed:
        return "set-used";
    case Why::Kind::SetSaferInOne:
        return "set-safer-in-one-piece";
    case Why::Kind::SetSaferWithClamp:
        return "set-safer-with-clamp";
    case Why::Kind::SetEnoughFrom:
        return "set-enough-from";
    case Why::Kind::HeldAtPacket:
        return "held-at-packet";
    case Why::Kind::AbovePacket:
        return "above-packet";
    case Why::Kind::LeastCost:
        return "least-cost";
    case Why::Kind::CeilingDecides:
        return "ceiling-decides";
    case Why::Kind::CrossesFromThroat:
        return "crosses-from-throat";
    case Why::Kind::LongOutsideRun:
        return "long-outside-run";
    }
    return {};
}

void writeHoop(JsonText& out, const Outline& hoop, bool openThroat) {
    out.beginObject();
    out.key("lengthMm").thousandths(hoop.lengthMm);
    out.key("widthMm").thousandths(hoop.widthMm);
    out.key("areaCm2").thousandths(hoop.areaCm2);
    out.key("openThroat").yesNo(openThroat);
    out.key("widestFromThroat").number(hoop.widestFromThroat);
    out.key("headExponent").number(hoop.headExponent);
    out.key("throatExponent").number(hoop.throatExponent);
    out.key("wallMm").thousandths(hoop.wallMm);
    out.key("standsOn").text(length::standsOnText(hoop.standsOn));
    out.endObject();
}

void writeArm(JsonText& out, const Arm& arm) {
    out.beginObject();
    out.key("side").text(sideText(arm.side));
    out.key("strings").beginList();
    for (const LaidString& string : arm.strings) {
        out.beginObject(Shape::Line);
        out.key("id").text(string.id.text());
        out.key("chordMm").thousandths(string.chordMm);
        out.key("to").text(length::runsToText(string.to));
        out.endObject();
    }
    out.endList();
    out.key("endsAt").text(arm.endsAtText());
    out.endObject();
}

void writePiece(JsonText& out, const PiecePlan& piece) {
    out.beginObject();
    out.key("name").text(pieceRoleText(piece.role));
    out.key("arms").beginList();
    for (const Arm& arm : piece.arms) {
        writeArm(out, arm);
    }
    out.endList();
    out.key("wallsMm").thousandths(piece.wallsMm);
    out.key("linksMm").thousandths(piece.linksMm);
    out.key("crimpMm").thousandths(piece.crimpMm);
    out.key("pathMm").thousandths(piece.pathMm);
    out.key("stretchPercent").thousandths(piece.stretchPercent);
    out.key("endsMm").thousandths(piece.endsMm);
    out.key("needMm").thousandths(piece.needMm);
    out.key("needSdMm").thousandths(piece.needSdMm);
    out.key("quantilesMm").beginObject(Shape::Line);
    out.key("p50").thousandths(piece.quantilesMm.p50);
    out.key("p90").thousandths(piece.quantilesMm.p90);
    out.key("p99").thousandths(piece.quantilesMm.p99);
    out.endObject();
    out.key("evidenceUsed").whole(piece.observations);
    out.key("cutMm").whole(piece.cut.millimetres());
    out.key("chanceShort").number(piece.chanceShort);
    out.key("heldAtPacket").yesNo(piece.heldAtPacket);
    if (piece.shortSide) {
        out.key("shortSideMm").whole(piece.shortSide->measure.millimetres());
        out.key("shortSideNeedMm").thousandths(piece.shortSide->needMm);
        out.key("shortSideHeadLengths").thousandths(piece.shortSide->headLengths);
        out.key("shortSideChanceShort").number(piece.shortSide->chanceShort);
        out.key("shortSideEvidenceUsed").whole(piece.shortSide->observations);
    }
    out.endObject();
}

void writeSet(JsonText& out, const length::SetJudgement& set) {
    out.beginObject();
    out.key("lengthMm").whole(set.length.millimetres());
    out.key("verdict").text(length::packetVerdictText(set.verdict));
    out.key("chanceNotEnough").number(set.chanceNotEnough);
    out.key("chanceWithClamp").number(set.chanceWithClamp);
    out.key("enoughFromMm").whole(set.enoughFrom.millimetres());
    out.key("ways").beginList();
    for (const length::SetWay& way : set.ways) {
        out.beginObject(Shape::Line);
        out.key("use").text(length::setUseText(way.use));
        out.key("sharesMm").beginList(Shape::Line);
        for (const Length share : way.shares) {
            out.whole(share.millimetres());
        }
        out.endList();
        out.key("chanceWorst").number(way.chanceWorst);
        out.endObject();
    }
    out.endList();
    if (set.alternative) {
        out.key("alternative").beginObject(Shape::Line);
        out.key("route").text(set.alternative->route);
        out.key("needMm").thousandths(set.alternative->needMm);
        out.key("chanceNotEnough").number(set.alternative->chanceNotEnough);
        out.endObject();
    }
    out.endObject();
}
} // namespace

std::string cutPlanToJson(const CutPlan& plan, const length::CutRequest& request,
                          std::span<const std::string> sentences) {
    JsonText out;
    out.beginObject();
    out.key("hoop");
    writeHoop(out, plan.hoop, request.hoop.openThroat);
    out.key("pieces").beginList();
    for (const PiecePlan& piece : plan.pieces) {
        writePiece(out, piece);
    }
    out.endList();
    out.key("chanceShortJob").number(plan.chanceShortJob);
    if (plan.set) {
        out.key("set");
        writeSet(out, *plan.set);
    }
    out.key("why").beginList();
    for (std::size_t i = 0; i < plan.why.size(); ++i) {
        const Why& why = plan.why[i];
        out.beginObject(Shape::Line);
        out.key("kind").text(kindName(why.kind));
        out.key("text").text(why.text);
        out.key("value").number(why.value);
        out.key("other").number(why.other);
        if (i < sentences.size()) {
            out.key("sentence").text(sentences[i]);
        }
        out.endObject();
    }
    out.endList();
    out.endObject();
    return out.result();
}

} // namespace rw::exchange
