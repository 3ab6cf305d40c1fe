// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/give_back.h"

#include "core/desk/lookups.h"
#include "core/desk/payment.h"

#include <algorithm>
#include <utility>

namespace rw::desk {

namespace {
GivenBack givenBack(Transaction& ledger, Job job, const Money& amount, bool already) {
    const Money left = -owedFor(job, ledger.jobs().paid(*job.id));
    return {.job = std::move(job), .already = already, .givenNow = amount, .left = left};
}

/// What the request key gave before, unless that was something else.
Result<GivenBack> givenBefore(Transaction& ledger, const JobPayment& before, const GiveBack& command,
                              const std::string& way) {
    const Payment& payment = before.payment;
    if (before.job != command.job || payment.amount != -command.amount || payment.way != way) {
        return refuse(Code::ChangedMeanwhile, {{"what", "payment"}, {"added", payment.amount.text()}});
    }
    return jobOf(ledger, command.job).map([&](Job job) {
        return givenBack(ledger, std::move(job), command.amount, true);
    });
}
} // namespace

Money owedFor(const Job& job, const Money& paid) { return job.state == JobState::Withdrawn ? -paid : job.total - paid; }

Result<GivenBack> giveBack(Transaction& ledger, const GiveBack& command) {
    const auto key = wordsOf("request key", command.requestKey, kLongestRequestKey);
    const auto way = maybeWordsOf("way of payment", command.way, kLongestMark);
    if (!key || !way) {
        return tl::unexpected(key ? way.error() : key.error());
    }
    if (const auto before = ledger.jobs().paymentByRequestKey(*key)) {
        return givenBefore(ledger, *before, command, *way);
    }
    auto job = jobOf(ledger, command.job);
    if (!job) {
        return tl::unexpected(job.error());
    }
    if (const auto payment = checkPayment(ledger, command.amount, *way); !payment) {
        return tl::unexpected(payment.error());
    }
    const Money owed = owedFor(*job, ledger.jobs().paid(command.job));
    const Money theirs = owed.minor() < 0 ? -owed : Money::zero(owed.currency());
    if (command.amount.minor() > theirs.minor()) {
        return refuse(Code::ImpossibleValue, {{"key", "payment"},
                                              {"text", command.amount.text()},
                                              {"expected", "at most " + theirs.text() + ", which is what is theirs"}});
    }
    ledger.jobs().pay(command.job, {.id = std::nullopt,
                                    .amount = -command.amount,
                                    .way = *way,
                                    .by = command.by,
                                    .corrects = std::nullopt,
                                    .requestKey = *key});
    return givenBack(ledger, *std::move(job), command.amount, false);
}

Result<std::vector<ToGiveBack>> toGiveBack(Transaction& ledger) {
    std::vector<ToGiveBack> jobs;
    for (OpenMatter& matter : ledger.reports().openMatters()) {
        if (const Money theirs = -matter.owed(); theirs.minor() > 0) {
            jobs.push_back({std::move(matter.job), theirs});
        }
    }
    std::ranges::sort(jobs, {}, [](const ToGiveBack& back) {
        return std::pair(back.job.state != JobState::Withdrawn, back.job.number);
    });
    return jobs;
}

} // namespace rw::desk
