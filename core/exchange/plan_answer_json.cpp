// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plan_json.h"

#include "core/exchange/json_text.h"

#include <cassert>

namespace rw::exchange {

namespace {
using stock::QueueReason;
using Kind = QueueReason::Kind;
using Shape = JsonText::Shape;

bool tellsWhatIsLeft(Kind kind) {
    return kind != Kind::FitsNowhere && kind != Kind::OpensSealed && kind != Kind::TimeWasUp;
}

void writeLabel(JsonText& out, const Label& label) {
    if (label.isNumber) {
        out.whole(std::stoll(label.text));
    } else {
        out.text(label.text);
    }
}

void writeReason(JsonText& out, const QueueReason& reason, const PlanRequest& request, const std::string& sentence) {
    out.beginObject(Shape::Line);
    out.key("kind").text(queueReasonKindText(reason.kind));
    if (reason.piece) {
        writeLabel(out.key("piece"), request.pieceNames[*reason.piece]);
    }
    if (reason.lot) {
        writeLabel(out.key("lot"), request.lotNames[*reason.lot]);
    }
    if (tellsWhatIsLeft(reason.kind)) {
        out.key("leavesMm").whole(reason.leaves.millimetres());
    }
    if (tellsWhatIsLeft(reason.kind) && reason.kind != Kind::MeasureFirst) {
        out.key("likelyLostMm").thousandths(reason.lostMm);
    }
    out.key("sentence").text(sentence);
    out.endObject();
}
} // namespace

std::string_view queueReasonKindText(QueueReason::Kind kind) {
    switch (kind) {
    case Kind::FitsNowhere:
        return "fits-nowhere";
    case Kind::OpensSealed:
        return "opens-sealed";
    case Kind::LeavesPlenty:
        return "leaves-plenty";
    case Kind::LeavesUseful:
        return "leaves-useful";
    case Kind::LeavesBadEnd:
        return "leaves-bad-end";
    case Kind::LeavesScrap:
        return "leaves-scrap";
    case Kind::MeasureFirst:
        return "measure-first";
    case Kind::TimeWasUp:
        return "time-was-up";
    }
    return {};
}

std::string planToJson(const stock::QueuePlan& plan, const PlanRequest& request, std::span<const QueueReason> reasons,
                       std::span<const std::string> sentences) {
    assert(reasons.size() == sentences.size() && plan.placing.size() == request.pieces.size());
    JsonText out;
    out.beginObject();
    out.key("assignments").beginList();
    for (std::size_t piece = 0; piece < plan.placing.size(); ++piece) {
        out.beginObject(Shape::Line);
        writeLabel(out.key("piece"), request.pieceNames[piece]);
        out.key("lot");
        if (const auto lot = plan.placing[piece]) {
            writeLabel(out, request.lotNames[*lot]);
        } else {
            out.nothing();
        }
        out.endObject();
    }
    out.endList();
    out.key("deltaMm").thousandths(plan.lostMm);
    out.key("proven").yesNo(plan.proven);
    out.key("why").beginList();
    for (std::size_t i = 0; i < reasons.size(); ++i) {
        writeReason(out, reasons[i], request, sentences[i]);
    }
    out.endList();
    out.endObject();
    return out.result();
}

} // namespace rw::exchange
