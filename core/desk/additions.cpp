// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"
#include "core/desk/frames.h"
#include "core/desk/lookups.h"

namespace rw::desk {

namespace {
Result<Customer> asKept(Customer customer) {
    auto name = wordsOf("name", customer.name, kLongestName);
    if (!name) {
        return tl::unexpected(name.error());
    }
    customer.name = *std::move(name);
    for (Contact& contact : customer.contacts) {
        auto text = wordsOf("contact", contact.text, kLongestName);
        if (!text) {
            return tl::unexpected(text.error());
        }
        contact.text = *std::move(text);
    }
    return customer;
}

Refusal addedOtherwise(std::string_view what, std::string added) {
    return Refusal(Code::ChangedMeanwhile, {{"what", std::string(what)}, {"added", std::move(added)}});
}

/// Who was added under a request key that is met again.
Result<CustomerId> addedBefore(Transaction& ledger, CustomerId id, const Customer& wish) {
    const auto stored = customerOf(ledger, id);
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    if (stored->name != wish.name || stored->contacts != wish.contacts) {
        return tl::unexpected(addedOtherwise("customer", stored->name));
    }
    return id;
}

bool isFrame(const FrameModel& stored, const std::variant<FrameModelId, FrameModel>& wish) {
    if (const auto* known = std::get_if<FrameModelId>(&wish)) {
        return stored.id == *known;
    }
    auto fresh = soundFrame(std::get<FrameModel>(wish));
    if (fresh) {
        fresh->id = stored.id;
        fresh->version = stored.version;
    }
    return fresh && *fresh == stored;
}

/// `mark`: the wish's as it is kept.
Result<RacketId> addedBefore(Transaction& ledger, RacketId id, const AddRacket& wish, const std::string& mark) {
    const auto stored = racketOf(ledger, id);
    const auto frame = stored ? frameOf(ledger, stored->frame) : tl::unexpected(stored.error());
    if (!frame) {
        return tl::unexpected(frame.error());
    }
    if (stored->customer != wish.customer || stored->mark != mark || !isFrame(*frame, wish.frame)) {
        return tl::unexpected(
            addedOtherwise("racket", stored->mark.empty() ? frame->name : frame->name + ' ' + stored->mark));
    }
    return id;
}

Result<FrameModelId> frameFor(Transaction& ledger, const std::variant<FrameModelId, FrameModel>& wish) {
    if (const auto* fresh = std::get_if<FrameModel>(&wish)) {
        return addFrame(ledger, *fresh);
    }
    return frameOf(ledger, std::get<FrameModelId>(wish)).map([](const FrameModel& known) { return *known.id; });
}

Result<void> checkTwins(Transaction& ledger, const Racket& racket) {
    for (const Racket& other : ledger.customers().racketsOf(racket.customer)) {
        if (other.frame != racket.frame) {
            continue;
        }
        if (racket.mark.empty()) {
            return refuse(Code::Missing, {{"what", "mark"}});
        }
        if (other.mark == racket.mark) {
            return refuse(Code::ImpossibleValue,
                          {{"key", "mark"}, {"text", racket.mark}, {"expected", "a mark that its twin does not have"}});
        }
    }
    return {};
}
} // namespace

Result<CustomerId> addCustomer(Transaction& ledger, const AddCustomer& command) {
    const auto key = wordsOf("request key", command.requestKey, kLongestRequestKey);
    if (!key) {
        return tl::unexpected(key.error());
    }
    const auto kept = asKept(command.customer);
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    if (const auto before = ledger.customers().byRequestKey(*key)) {
        return addedBefore(ledger, *before, *kept);
    }
    return ledger.customers().add(*kept, *key);
}

Result<RacketId> addRacket(Transaction& ledger, const AddRacket& command) {
    const auto key = wordsOf("request key", command.requestKey, kLongestRequestKey);
    if (!key) {
        return tl::unexpected(key.error());
    }
    auto mark = maybeWordsOf("mark", command.mark, kLongestMark);
    if (!mark) {
        return tl::unexpected(mark.error());
    }
    if (const auto before = ledger.customers().racketByRequestKey(*key)) {
        return addedBefore(ledger, *before, command, *mark);
    }
    if (const auto customer = presentCustomerOf(ledger, command.customer); !customer) {
        return tl::unexpected(customer.error());
    }
    const auto frame = frameFor(ledger, command.frame);
    if (!frame) {
        return tl::unexpected(frame.error());
    }
    const Racket racket{std::nullopt, command.customer, *frame, *std::move(mark)};
    if (const auto apart = checkTwins(ledger, racket); !apart) {
        return tl::unexpected(apart.error());
    }
    return ledger.customers().addRacket(racket, *key);
}

Result<FrameModelId> addFrame(Transaction& ledger, const FrameModel& frame) {
    const auto kept = soundFrame(frame);
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    return ledger.frames().add(*kept);
}

} // namespace rw::desk
