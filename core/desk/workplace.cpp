// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/workplace.h"

#include "core/customers/search_key.h"
#include "core/desk/lookups.h"
#include "core/desk/machine_of_job.h"
#include "core/units/decimal.h"

#include <algorithm>

namespace rw::desk {

namespace {
using std::chrono::minutes;

constexpr int kFinestStep = 1;
constexpr int kCoarsestStep = 1000;
constexpr Length kLongestReach = Length::fromMillimetres(2000);

tl::unexpected<Refusal> impossible(std::string_view key, std::string text, std::string_view expected) {
    return refuse(Code::ImpossibleValue,
                  {{"key", std::string(key)}, {"text", std::move(text)}, {"expected", std::string(expected)}});
}

std::string_view freeName(const StaffMember&) { return "a name that nobody else here has"; }
std::string_view freeName(const Machine&) { return "a name that no other machine has"; }

template<class Row>
Result<void> checkNameIsFree(const std::vector<Row>& rows, const Row& wanted) {
    const auto sameName = [&](const Row& row) {
        return row.id != wanted.id && searchKey(row.name) == searchKey(wanted.name);
    };
    if (std::ranges::any_of(rows, sameName)) {
        return impossible("name", wanted.name, freeName(wanted));
    }
    return {};
}

/// Who is to go must not be the last: the shop would stand still.
template<class Row>
Result<void> checkSomethingStays(const std::vector<Row>& rows, const Row& wanted, std::string_view why) {
    const auto stays = [&](const Row& row) { return row.id != wanted.id && !row.retired; };
    if (wanted.retired && std::ranges::none_of(rows, stays)) {
        return impossible("retired", wanted.name, why);
    }
    return {};
}

Result<void> checkWeek(const std::optional<WeekHours>& week) {
    if (!week) {
        return {};
    }
    if (std::ranges::none_of(*week, [](const auto& day) { return day.has_value(); })) {
        return refuse(Code::ImpossibleValue,
                      {{"key", std::string("hours")}, {"expected", std::string("some hours on one day at least")}});
    }
    for (const auto& day : *week) {
        if (day && (day->from < minutes(0) || day->to > minutes(24 * 60) || day->from >= day->to)) {
            return refuse(Code::ImpossibleValue,
                          {{"key", std::string("hours")}, {"expected", std::string("from an hour to a later one")}});
        }
    }
    return {};
}

/// The same row but for what the ledger gave it.
template<class Row>
std::optional<Row> alreadyThere(const std::vector<Row>& rows, Row wanted) {
    const auto same = [&](const Row& row) {
        wanted.id = row.id;
        wanted.version = row.version;
        return row == wanted;
    };
    const auto found = std::ranges::find_if(rows, same);
    return found == rows.end() ? std::nullopt : std::optional(*found);
}

/// Writes a row that was found to be sound.
template<class Row>
Result<Row> write(Transaction& ledger, const std::vector<Row>& rows, Row row) {
    if (row.id) {
        if (const auto updated = ledger.shop().update(row); !updated) {
            return tl::unexpected<Refusal>(updated.error());
        }
        ++row.version;
        return row;
    }
    if (auto there = alreadyThere(rows, row)) {
        return *std::move(there);
    }
    if (const auto free = checkNameIsFree(rows, row); !free) {
        return tl::unexpected<Refusal>(free.error());
    }
    row.id = ledger.shop().add(row);
    row.version = 1;
    return row;
}

Result<void> checkNothingOnIt(Transaction& ledger, const Machine& machine) {
    for (const JobLine& line : ledger.jobs().inStates({JobState::OnTheMachine})) {
        const auto job = ledger.jobs().get(line.id);
        if (job && machineOfJob(ledger, *job) == machine.id) {
            return impossible("retired", machine.name, "job " + std::to_string(line.number) + " is still on it");
        }
    }
    return {};
}

Result<void> checkDial(const Machine& machine) {
    const auto outOfRange = [](std::string_view what, std::string text, std::string lowest, std::string highest) {
        return refuse(Code::OutOfRange, {{"what", std::string(what)},
                                         {"text", std::move(text)},
                                         {"lowest", std::move(lowest)},
                                         {"highest", std::move(highest)}});
    };
    if (machine.stepHundredths < kFinestStep || machine.stepHundredths > kCoarsestStep) {
        return outOfRange("step", decimalText(machine.stepHundredths, 2), "0.01", "10");
    }
    if (machine.reach.isNegative() || machine.reach > kLongestReach) {
        return outOfRange("reach", machine.reach.text(), "0 m", kLongestReach.text());
    }
    return {};
}
} // namespace

Result<StaffMember> keepPerson(Transaction& ledger, const StaffMember& wanted) {
    auto name = wordsOf("name", wanted.name, kLongestPlaceName);
    if (!name) {
        return tl::unexpected<Refusal>(name.error());
    }
    StaffMember member = wanted;
    member.name = *std::move(name);
    std::vector<CivilDate>& off = member.worker.daysOff;
    std::ranges::sort(off);
    off.erase(std::unique(off.begin(), off.end()), off.end());

    const std::vector<StaffMember> staff = ledger.shop().staff();
    for (const auto& sound :
         {checkWeek(member.worker.week), member.id ? checkNameIsFree(staff, member) : Result<void>(),
          checkSomethingStays(staff, member, "nobody else works here")}) {
        if (!sound) {
            return tl::unexpected<Refusal>(sound.error());
        }
    }
    return write(ledger, staff, std::move(member));
}

Result<Machine> keepMachine(Transaction& ledger, const Machine& wanted) {
    auto name = wordsOf("name", wanted.name, kLongestPlaceName);
    if (!name) {
        return tl::unexpected<Refusal>(name.error());
    }
    Machine machine = wanted;
    machine.name = *std::move(name);
    const std::vector<Machine> machines = ledger.shop().machines();
    for (const auto& sound : {checkDial(machine), machine.id ? checkNameIsFree(machines, machine) : Result<void>(),
                              checkSomethingStays(machines, machine, "no other machine is in use"),
                              machine.retired ? checkNothingOnIt(ledger, machine) : Result<void>()}) {
        if (!sound) {
            return tl::unexpected<Refusal>(sound.error());
        }
    }
    return write(ledger, machines, std::move(machine));
}

} // namespace rw::desk
