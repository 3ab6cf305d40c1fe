// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/frames.h"

#include "core/desk/lookups.h"
#include "core/length/cut_plan.h"
#include "core/length/route_choice.h"

#include <algorithm>

namespace rw::desk {

namespace {
constexpr int kFramesCompared = 50; ///< of one name; more of them are no accident
constexpr int kJobsLookedAt = 500;  ///< open jobs on one frame are a handful
constexpr Length kShortestCut = Length::fromMillimetres(1'000);
constexpr Length kLongestCut = Length::fromMillimetres(30'000);

Result<void> checkMarked(const MarkedRange& marked) {
    if (marked.lowest && marked.highest && marked.lowest->newtons() > marked.highest->newtons()) {
        return refuse(Code::ImpossibleValue, {{"key", "marked range"},
                                              {"text", marked.lowest->text() + " – " + marked.highest->text()},
                                              {"expected", "the lower value first"}});
    }
    return {};
}

Result<void> checkHoop(const FrameModel& frame) {
    // The length model names what no frame can be; two pieces go into any frame, so nothing else is asked of it.
    length::CutRequest request = length::defaultRequest(frame.sport);
    request.hoop = frame.hoop;
    request.pattern = frame.pattern;
    request.method = Method::TwoPiece;
    const auto plan = length::planCut(request);
    return plan ? Result<void>() : tl::unexpected(plan.error());
}

Result<void> checkRoute(const FrameModel& frame, Method method, const std::string& route, Side shortSide) {
    length::CutRequest request = length::defaultRequest(frame.sport);
    request.pattern = frame.pattern;
    request.method = method;
    if (!route.empty()) {
        request.route = route;
    }
    request.shortSide = shortSide;
    const auto choice = length::chooseRoute(request);
    return choice ? Result<void>() : tl::unexpected(choice.error());
}

/// What is planned for a racket that still waits must be possible afterwards too: the bench would have no card.
Result<void> checkOpenJobs(Transaction& ledger, const FrameModel& frame) {
    for (const JobId id : ledger.jobs().ofFrame(*frame.id, kJobsLookedAt)) {
        const auto job = ledger.jobs().get(id);
        if (!job || !mayStillChange(*job) || checkRoute(frame, job->method, job->route, job->shortSide)) {
            continue;
        }
        return refuse(Code::ImpossibleValue, {{"key", std::string("pattern")},
                                              {"expected", "one on which job " + std::to_string(job->number) +
                                                               " can be laid as it was logged"}});
    }
    return {};
}

Result<std::string> wordsIfAny(std::string_view what, const std::string& typed, std::int64_t most,
                               std::string_view otherwise) {
    auto words = maybeWordsOf(what, typed, most);
    return words && words->empty() ? Result<std::string>(std::string(otherwise)) : words;
}

std::optional<FrameModel> sameAlready(Transaction& ledger, FrameModel frame) {
    for (FrameModel& other : ledger.frames().find(frame.name, kFramesCompared)) {
        frame.id = other.id;
        frame.version = other.version;
        if (other == frame) {
            return std::move(other);
        }
    }
    return std::nullopt;
}
} // namespace

Result<FrameModel> soundFrame(const FrameModel& wanted) {
    FrameModel frame = wanted;
    auto name = wordsOf("frame", frame.name, kLongestFrameName);
    auto text = maybeWordsOf("bench note", frame.note.text, kLongestNote);
    auto mark = wordsIfAny("mounting mark", frame.note.mountingMark, kLongestName, BenchNote().mountingMark);
    auto reason = maybeWordsOf("reason", frame.note.forcedSide ? frame.note.forcedSide->reason : "", kLongestName);
    for (const auto* words : {&name, &text, &mark, &reason}) {
        if (!*words) {
            return tl::unexpected<Refusal>(words->error());
        }
    }
    frame.name = *std::move(name);
    frame.note.text = *std::move(text);
    frame.note.mountingMark = *std::move(mark);
    if (frame.note.forcedSide) {
        frame.note.forcedSide->reason = *std::move(reason);
    }
    for (const auto& sound : {checkMarked(frame.marked), checkHoop(frame)}) {
        if (!sound) {
            return tl::unexpected<Refusal>(sound.error());
        }
    }
    return frame;
}

Result<KnownFrame> knownFrame(Transaction& ledger, FrameModelId id) {
    auto frame = frameOf(ledger, id);
    if (!frame) {
        return tl::unexpected<Refusal>(frame.error());
    }
    return KnownFrame{*std::move(frame), ledger.frames().usualCuts(id)};
}

Result<FrameModel> keepFrame(Transaction& ledger, const FrameModel& wanted) {
    auto frame = soundFrame(wanted);
    if (!frame) {
        return frame;
    }
    if (!frame->id) {
        if (auto already = sameAlready(ledger, *frame)) {
            return *std::move(already);
        }
        frame->id = ledger.frames().add(*frame);
        frame->version = 1;
        return frame;
    }
    if (const auto laid = checkOpenJobs(ledger, *frame); !laid) {
        return tl::unexpected<Refusal>(laid.error());
    }
    if (const auto updated = ledger.frames().update(*frame); !updated) {
        return tl::unexpected<Refusal>(updated.error());
    }
    ++frame->version;
    return frame;
}

Result<void> keepUsualCut(Transaction& ledger, const UsualCut& cut) {
    const auto frame = frameOf(ledger, cut.frame);
    if (!frame) {
        return tl::unexpected<Refusal>(frame.error());
    }
    if (cut.cut < kShortestCut || cut.cut > kLongestCut) {
        return refuse(Code::OutOfRange, {{"what", std::string("cut")},
                                         {"text", cut.cut.text()},
                                         {"lowest", kShortestCut.text()},
                                         {"highest", kLongestCut.text()}});
    }
    const bool whole = cut.role == PieceRole::Whole;
    if (!whole && !cut.route.empty()) {
        return refuse(Code::ImpossibleValue, {{"key", std::string("route")},
                                              {"text", cut.route},
                                              {"expected", std::string("left out for a piece of two")}});
    }
    if (cut.shortSide && (!whole || !cut.shortSide->isPositive() || *cut.shortSide >= cut.cut)) {
        return refuse(Code::ImpossibleValue, {{"key", std::string("short side")},
                                              {"text", cut.shortSide->text()},
                                              {"expected", std::string("a part of a whole string")}});
    }
    if (whole) {
        if (const auto fits = checkRoute(*frame, Method::OnePiece, cut.route, Side::Left); !fits) {
            return fits;
        }
    }
    ledger.frames().setUsualCut(cut);
    return {};
}

Result<void> dropUsualCut(Transaction& ledger, const UsualCut& cut) {
    ledger.frames().dropUsualCut(cut);
    return {};
}

} // namespace rw::desk
