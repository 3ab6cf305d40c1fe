// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/step.h"

#include "core/base/named_texts.h"
#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/stockroom.h"

#include <algorithm>
#include <sstream>

namespace rw::stories {

namespace {
using Kind = Step::Kind;

constexpr NamedTexts<Kind, 7> kKinds({{{Kind::Receive, "receive"},
                                       {Kind::Log, "log"},
                                       {Kind::Take, "take"},
                                       {Kind::Cut, "cut"},
                                       {Kind::Lose, "lose"},
                                       {Kind::Finish, "finish"},
                                       {Kind::Collect, "collect"}}});

const TensionPair kTensions{lb(52), lb(50)};

By by(desk::Transaction& ledger, std::string station) {
    return {*ledger.shop().staff().front().id, std::move(station), SystemClock().now()};
}

StringArticleId articleWith(desk::Transaction& ledger, std::string_view code) {
    const auto articles = ledger.strings().all();
    return *std::ranges::find(articles, code, &StringArticle::code)->id;
}

template<class T>
Result<void> dropValue(const Result<T>& result) {
    return result ? Result<void>() : Result<void>(tl::unexpected(result.error()));
}

Result<void> receive(desk::Transaction& ledger, const Step& step) {
    if (ledger.lots().byTag(step.key)) {
        return {}; // a tag says which lot is meant: it is on the shelf
    }
    return dropValue(desk::receiveLot(ledger, {.tag = step.key,
                                               .article = articleWith(ledger, step.what),
                                               .owner = std::nullopt,
                                               .nominal = step.length,
                                               .price = pounds(11'000),
                                               .shipping = pounds(450),
                                               .batch = "",
                                               .by = by(ledger, "stockroom")}));
}

Result<void> log(desk::Transaction& ledger, const Step& step) {
    const auto people = must(desk::findPeople(ledger, "Petra Lindobi"));
    const desk::RacketSummary& hers = people.front().rackets.front();
    desk::IntakeDraft draft{.frame = *hers.frame.id,
                            .racket = hers.racket.id,
                            .method = Method::OnePiece,
                            .route = std::nullopt,
                            .shortSide = std::nullopt,
                            .mains = {.article = articleWith(ledger, "K"), .lot = std::nullopt},
                            .crosses = std::nullopt,
                            .tensions = kTensions,
                            .extras = {}};
    if (step.what == "hybrid") {
        draft.method = Method::TwoPiece;
        draft.crosses = desk::WantedString{.article = articleWith(ledger, "L"), .lot = std::nullopt};
    }
    return dropValue(desk::logJob(ledger, {.requestKey = step.key,
                                           .customer = *people.front().customer.id,
                                           .racket = *hers.racket.id,
                                           .draft = draft,
                                           .note = "",
                                           .promised = std::nullopt,
                                           .by = by(ledger, "counter")}));
}

Result<void> onJob(desk::Transaction& ledger, const Step& step, JobId job) {
    const MachineId machine = *ledger.shop().machines().front().id;
    const By who = by(ledger, "bench");
    switch (step.kind) {
    case Kind::Take:
        return dropValue(desk::takeJob(ledger, {job, machine, who}));
    case Kind::Cut:
        return dropValue(
            desk::confirmCut(ledger, {job, step.role, step.attempt, std::nullopt, step.length, std::nullopt, who}));
    case Kind::Lose:
        return dropValue(desk::loseLength(ledger, {job, step.role, step.attempt, step.lost, who}));
    case Kind::Finish:
        return dropValue(desk::finishJob(ledger, {job, kTensions, machine, "", who}));
    default:
        return dropValue(desk::handOver(ledger, {job, "", std::nullopt, "", who}));
    }
}
} // namespace

std::string Step::text() const {
    return std::string(kKinds.text(kind)) + " " + key + " " + what + " " + std::string(pieceRoleText(role)) + " " +
           std::to_string(attempt) + " " + std::to_string(length.millimetres()) + " " +
           std::string(lostReasonText(lost));
}

Step Step::parse(std::string_view line) {
    std::istringstream in{std::string(line)};
    std::string kind;
    std::string role;
    std::string lost;
    std::int64_t length = 0;
    Step step{.kind = Kind::Log, .key = ""};
    in >> kind >> step.key >> step.what >> role >> step.attempt >> length >> lost;
    if (!in || !kKinds.value(kind) || !pieceRoleFromText(role) || !lostReasonFromText(lost)) {
        throw std::runtime_error("no line of a journal: " + std::string(line));
    }
    step.kind = *kKinds.value(kind);
    step.role = *pieceRoleFromText(role);
    step.length = mm(length);
    step.lost = *lostReasonFromText(lost);
    return step;
}

Result<void> perform(desk::Ledger& ledger, const Step& step) {
    return tryWrite(ledger, [&](desk::Transaction& open) -> Result<void> {
        if (step.kind == Kind::Receive) {
            return receive(open, step);
        }
        if (step.kind == Kind::Log) {
            return log(open, step);
        }
        const auto job = open.jobs().byRequestKey(step.key);
        return job ? onJob(open, step, *job) : refuse(Code::NotFound, {{"what", "job"}, {"text", step.key}});
    });
}

Job jobOf(desk::Transaction& ledger, const std::string& key) {
    const auto id = ledger.jobs().byRequestKey(key);
    if (!id) {
        throw std::runtime_error("no job " + key);
    }
    return *ledger.jobs().get(*id);
}

} // namespace rw::stories
