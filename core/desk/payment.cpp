// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/payment.h"

#include "core/desk/lookups.h"

#include <utility>

namespace rw::desk {

namespace {
/// What the request key took before, unless that was something else.
Result<PaymentTaken> takenBefore(Transaction& ledger, const JobPayment& before, const TakePayment& command,
                                 const std::string& way) {
    const Payment& payment = before.payment;
    if (before.job != command.job || payment.amount != command.amount || payment.way != way) {
        return refuse(Code::ChangedMeanwhile, {{"what", "payment"}, {"added", payment.amount.text()}});
    }
    auto job = jobOf(ledger, command.job);
    if (!job) {
        return tl::unexpected(job.error());
    }
    return PaymentTaken{
        .job = *std::move(job), .already = true, .paidNow = payment.amount, .paid = ledger.jobs().paid(command.job)};
}
} // namespace

Result<void> checkPayment(Transaction& ledger, const Money& payment, const std::string& way) {
    const Currency currency = ledger.shop().currency();
    if (payment.currency() != currency) {
        return refuse(Code::CurrencyMismatch, {{"left", payment.currency().code()}, {"right", currency.code()}});
    }
    if (payment.minor() <= 0) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "payment"}, {"text", payment.text()}, {"expected", "more than nothing"}});
    }
    if (way.empty()) {
        return refuse(Code::Missing, {{"what", "way of payment"}});
    }
    return {};
}

Result<PaymentTaken> takePayment(Transaction& ledger, const TakePayment& command) {
    const auto key = wordsOf("request key", command.requestKey, kLongestRequestKey);
    const auto way = maybeWordsOf("way of payment", command.way, kLongestMark);
    if (!key || !way) {
        return tl::unexpected(key ? way.error() : key.error());
    }
    if (const auto before = ledger.jobs().paymentByRequestKey(*key)) {
        return takenBefore(ledger, *before, command, *way);
    }
    auto job = jobOf(ledger, command.job);
    if (!job) {
        return tl::unexpected(job.error());
    }
    if (job->state == JobState::Withdrawn) {
        return refuse(Code::WrongState, {{"job", job->number},
                                         {"state", std::string(jobStateText(job->state))},
                                         {"wanted", "logged, on-the-machine, strung, collected"}});
    }
    if (const auto payment = checkPayment(ledger, command.amount, *way); !payment) {
        return tl::unexpected(payment.error());
    }
    ledger.jobs().pay(command.job, {.id = std::nullopt,
                                    .amount = command.amount,
                                    .way = *way,
                                    .by = command.by,
                                    .corrects = std::nullopt,
                                    .requestKey = *key});
    return PaymentTaken{
        .job = *std::move(job), .already = false, .paidNow = command.amount, .paid = ledger.jobs().paid(command.job)};
}

} // namespace rw::desk
