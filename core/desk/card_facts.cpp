// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/card_facts.h"

#include "core/desk/change_asked.h"
#include "core/desk/consent.h"
#include "core/desk/lookups.h"

#include <algorithm>

namespace rw::desk {

namespace {
bool isTaking(const JobEvent& event) {
    return event.kind == JobEventKind::Taken || event.kind == JobEventKind::Reopened;
}
} // namespace

std::string staffName(Transaction& ledger, StaffId id) {
    const std::vector<StaffMember> staff = ledger.shop().staff();
    const auto found = std::ranges::find(staff, std::optional(id), &StaffMember::id);
    return found == staff.end() ? std::string() : found->name;
}

std::optional<CardAbove> cardAbove(Transaction& ledger, const Job& job, const FrameModel& frame) {
    const auto above = aboveMarked(frame.marked, job.asked);
    if (!above) {
        return std::nullopt;
    }
    CardAbove card{.above = *above, .consent = consentTo(ledger, *job.id, above->pull), .toldBy = {}};
    if (card.consent) {
        card.toldBy = staffName(ledger, card.consent->by.staff);
    }
    return card;
}

std::optional<CardChange> cardChange(Transaction& ledger, const Job& job) {
    const std::vector<AskedChange> changes = changesToNodTo(ledger, *job.id);
    if (changes.empty()) {
        return std::nullopt;
    }
    return CardChange{changes.front().before, staffName(ledger, changes.back().by.staff), changes.back().by.at};
}

std::optional<CardHands> cardHands(Transaction& ledger, const Job& job) {
    const bool lies = job.state == JobState::OnTheMachine;
    if (!lies && job.state != JobState::Logged && job.state != JobState::Waiting) {
        return std::nullopt;
    }
    const std::vector<JobEvent> events = ledger.jobs().events(*job.id);
    const auto taken = std::ranges::find_if(events.rbegin(), events.rend(), isTaking);
    if (taken == events.rend()) {
        return std::nullopt;
    }
    CardHands hands{.name = staffName(ledger, taken->by.staff), .machine = {}, .since = taken->by.at, .lies = lies};
    if (const auto machine = taken->machine ? machineOf(ledger, *taken->machine) : refuse(Code::NotFound)) {
        hands.machine = machine->name;
    }
    if (!lies) {
        // It left the machine with the first event that followed and was no cut or loss.
        const auto left = std::find_if(taken.base(), events.end(), [](const JobEvent& event) {
            return event.kind == JobEventKind::PutDown || event.kind == JobEventKind::Waiting ||
                   event.kind == JobEventKind::Withdrawn;
        });
        hands.since = left == events.end() ? hands.since : left->by.at;
    }
    return hands;
}

} // namespace rw::desk
