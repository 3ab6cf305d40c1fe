// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/check/ledger_check.h"

#include "core/base/world_error.h"
#include "core/sql/check/engine_check.h"
#include "core/sql/check/own_facts.h"
#include "core/sql/statement.h"
#include "core/sql/work.h"

#include <array>
#include <string_view>
#include <utility>

namespace rw::sql {

namespace {

struct Rule {
    std::string_view words;
    std::string_view query; ///< gives a row for each thing that breaks the rule, said in the column "what"
};

constexpr std::array kRules = {
    Rule{"a ledger says once what it is", "check_ledger_facts"},
    Rule{"a lot's length is the sum of its movements", "check_lot_length"},
    Rule{"no lot goes below zero", "check_lot_balance"},
    Rule{"a closed lot is empty", "check_lot_closed"},
    Rule{"the lots of a delivery share its shipping", "check_delivery_shipping"},
    Rule{"a lot came once", "check_lot_received"},
    Rule{"nobody's job is cut off another customer's string", "check_lot_owner"},
    Rule{"a job is cut off the string that it is to have", "check_cut_article"},
    Rule{"a piece is planned off a lot that it may have", "check_piece_lot"},
    Rule{"every movement has its reason", "check_movement_reason"},
    Rule{"a correction takes one movement of its lot back", "check_movement_corrects"},
    Rule{"what was weighed in has its weights", "check_weighed_movement"},
    Rule{"one stock-take goes on at a time", "check_stock_take"},
    Rule{"an attempt is charged once", "check_cut_once"},
    Rule{"a cut is a movement and an event", "check_cut_event"},
    Rule{"an event's attempt is one of its job", "check_event_attempt"},
    Rule{"attempts follow one another and the last is open", "check_attempt_chain"},
    Rule{"what was lost had been cut", "check_attempt_lost"},
    Rule{"tails are shorter than the cut that they came off", "check_tails"},
    Rule{"a job has the pieces of its method", "check_job_pieces"},
    Rule{"each event was possible when it happened", "check_job_steps"},
    Rule{"a job's state follows from its events", "check_job_state"},
    Rule{"a racket that is strung was cut for", "check_job_finished"},
    Rule{"what was strung is written down", "check_strung_event"},
    Rule{"what is written down was strung", "check_strung_row"},
    Rule{"who took a racket is written down with the event", "check_handover"},
    Rule{"a job's racket is its customer's", "check_job_racket"},
    Rule{"who was removed has nothing here", "check_customer_removed"},
    Rule{"a job's total is the sum of its charges", "check_job_total"},
    Rule{"a job's money is of one currency", "check_job_currency"},
    Rule{"money is corrected in its own job", "check_money_corrects"},
    Rule{"what happened, happened in these centuries", "check_moments"},
};

/// A rule that needs what the program knows beside what is stored; gives a text for each thing that breaks it.
struct OwnRule {
    std::string_view words;
    std::vector<std::string> (*find)(Connection&);
};

constexpr std::array kOwnRules = {
    OwnRule{"a job takes the steps that the program knows", wrongTransitions},
    OwnRule{"each step of the schema is told of", wrongVersions},
    OwnRule{"the shop's currency and time zone are known", unknownFacts},
    OwnRule{"turns are counted in one place", wrongTurns},
};

void apply(const Rule& rule, Connection& connection, std::vector<desk::Finding>& findings) {
    // Each rule in a transaction of its own: one that fails must not silence the next.
    auto work = Work::reading(connection);
    Statement query(connection, rule.query);
    query.run();
    while (query.next()) {
        findings.push_back({std::string(rule.words), query.text("what")});
    }
    work.commit();
}

void apply(const OwnRule& rule, Connection& connection, std::vector<desk::Finding>& findings) {
    auto work = Work::reading(connection);
    for (std::string& what : rule.find(connection)) {
        findings.push_back({std::string(rule.words), std::move(what)});
    }
    work.commit();
}

template<class AnyRule>
void applyReadable(const AnyRule& rule, Connection& connection, std::vector<desk::Finding>& findings) {
    try {
        apply(rule, connection, findings);
    } catch (const LedgerCorrupt& error) {
        findings.push_back({std::string(rule.words), std::string("cannot be read: ") + error.what()});
    }
}

} // namespace

int ruleCount() { return static_cast<int>(kRules.size()); }

std::vector<desk::Finding> checkLedger(Connection& connection) {
    std::vector<desk::Finding> findings = checkEngine(connection);
    for (const Rule& rule : kRules) {
        applyReadable(rule, connection, findings);
    }
    for (const OwnRule& rule : kOwnRules) {
        applyReadable(rule, connection, findings);
    }
    return findings;
}

} // namespace rw::sql
