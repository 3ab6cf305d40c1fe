// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lookups.h"

#include "core/base/readable_text.h"
#include "core/units/decimal.h"

#include <algorithm>

namespace rw::desk {

namespace {
template<class Kind>
tl::unexpected<Refusal> notFound(std::string_view what, Id<Kind> id) {
    return refuse(Code::NotFound, {{"what", std::string(what)}, {"text", std::to_string(id.value())}});
}

template<class Value, class Kind>
Result<Value> orNotFound(std::optional<Value> found, std::string_view what, Id<Kind> id) {
    if (!found) {
        return notFound(what, id);
    }
    return *std::move(found);
}

/// Without white space and line ends around it.
std::string_view withoutSpaceAround(std::string_view text) {
    for (std::string_view before; text != before;) {
        before = text;
        text = trimmed(text);
        text.remove_prefix(std::min(text.find_first_not_of("\r\n"), text.size()));
        text = text.substr(0, text.find_last_not_of("\r\n") + 1);
    }
    return text;
}

std::int64_t characters(std::string_view utf8) {
    // every byte but the continuation bytes 10xxxxxx begins a character
    return std::ranges::count_if(utf8, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
}
} // namespace

Result<Job> jobOf(Transaction& ledger, JobId id) { return orNotFound(ledger.jobs().get(id), "job", id); }
Result<Customer> customerOf(Transaction& ledger, CustomerId id) {
    return orNotFound(ledger.customers().get(id), "customer", id);
}
Result<Customer> presentCustomerOf(Transaction& ledger, CustomerId id) {
    auto customer = customerOf(ledger, id);
    if (customer && customer->removed) {
        return orNotFound(std::optional<Customer>(), "customer", id);
    }
    return customer;
}
Result<Racket> racketOf(Transaction& ledger, RacketId id) {
    return orNotFound(ledger.customers().racket(id), "racket", id);
}
Result<FrameModel> frameOf(Transaction& ledger, FrameModelId id) {
    return orNotFound(ledger.frames().get(id), "frame", id);
}
Result<StringArticle> articleOf(Transaction& ledger, StringArticleId id) {
    return orNotFound(ledger.strings().get(id), "string", id);
}
Result<Lot> lotOf(Transaction& ledger, LotId id) { return orNotFound(ledger.lots().get(id), "lot", id); }

Result<Machine> machineOf(Transaction& ledger, MachineId id) {
    for (Machine& machine : ledger.shop().machines()) {
        if (machine.id == id) {
            return std::move(machine);
        }
    }
    return notFound("machine", id);
}

Result<JobPiece> pieceOf(const Job& job, PieceRole role) {
    const auto found = std::ranges::find(job.pieces, role, &JobPiece::role);
    if (found == job.pieces.end()) {
        return refuse(Code::NotFound, {{"what", "piece"}, {"text", std::string(pieceRoleText(role))}});
    }
    return *found;
}

Result<void> mayHappen(const Job& job, JobEventKind kind) {
    const auto after = stateAfter(job.state, kind);
    if (!after) {
        return refuse(Code::WrongState, {{"job", job.number},
                                         {"state", std::string(jobStateText(job.state))},
                                         {"wanted", after.error().text("wanted")}});
    }
    return {};
}

Result<std::string> maybeWordsOf(std::string_view what, std::string_view typed, std::int64_t most) {
    if (!isReadableText(typed)) {
        return refuse(Code::Unreadable, {{"what", std::string(what)}, {"text", std::string(typed)}});
    }
    const std::string shown = withoutBidiControls(typed);
    const std::string_view words = withoutSpaceAround(shown);
    if (const std::int64_t length = characters(words); length > most) {
        return refuse(Code::TooLong, {{"what", std::string(what)}, {"length", length}, {"most", most}});
    }
    return std::string(words);
}

Result<void> mayStillChange(const Job& job) {
    return mayHappen(job, JobEventKind::Withdrawn); // what can be withdrawn is still to be strung
}

Result<std::string> wordsOf(std::string_view what, std::string_view typed, std::int64_t most) {
    auto words = maybeWordsOf(what, typed, most);
    if (words && words->empty()) {
        return refuse(Code::Missing, {{"what", std::string(what)}});
    }
    return words;
}

Result<void> checkLength(std::string_view what, Length length, Length lowest) {
    if (length < lowest || length > kLongestLot) {
        return refuse(Code::OutOfRange, {{"what", std::string(what)},
                                         {"text", length.text()},
                                         {"lowest", lowest.text()},
                                         {"highest", kLongestLot.text()}});
    }
    return {};
}

} // namespace rw::desk
