// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_reports.h"

#include "core/base/world_error.h"
#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/job_rows.h"
#include "core/sql/repositories/ledger_tables.h"
#include "core/sql/repositories/row.h"

#include <unordered_map>

namespace rw::sql {

namespace {
void runBetween(Statement& statement, Instant from, Instant to) {
    statement.bind(":from", stored(from));
    statement.bind(":to", stored(to));
    statement.run();
}
} // namespace

std::vector<desk::OpenMatter> SqlReports::openMatters() {
    Statement statement(m_connection, "list_open_matters");
    statement.run();
    std::vector<desk::OpenMatter> matters;
    while (statement.next()) {
        const Row row(statement, "job");
        const Currency currency = row.currency();
        matters.push_back({.job = jobLineIn(statement),
                           .strung = row.optionalInstant("strung_at"),
                           .told = row.optionalInstant("told_at"),
                           .collected = row.optionalInstant("collected_at"),
                           .total = Money::fromMinor(row.wide("total_minor"), currency),
                           .paid = Money::fromMinor(row.wide("paid_minor"), currency)});
    }
    return matters;
}

Money SqlReports::account(CustomerId customer) {
    Statement statement(m_connection, "get_account_of_customer");
    statement.bind(":customer", stored(customer));
    statement.run();
    if (!statement.next()) {
        throw LedgerCorrupt("ledger: its row is missing");
    }
    const Row row(statement, "ledger");
    return Money::fromMinor(row.wide("owed_minor"), row.currency());
}

std::vector<desk::LedgerTable> SqlReports::tables() { return ledgerTables(m_connection); }

std::vector<desk::PaymentLine> SqlReports::payments(Instant from, Instant to) {
    Statement statement(m_connection, "list_payments_between");
    runBetween(statement, from, to);
    std::vector<desk::PaymentLine> payments;
    while (statement.next()) {
        const Row row(statement, "payment");
        payments.push_back({.job = row.id<JobId>("job_id"),
                            .number = row.wide("number"),
                            .customer = row.text("customer_name"),
                            .amount = Money::fromMinor(row.wide("amount_minor"), row.currency()),
                            .way = row.text("way"),
                            .at = row.instant("at")});
    }
    return payments;
}

std::vector<desk::StrungJob> SqlReports::strung(Instant from, Instant to) {
    std::vector<desk::StrungJob> jobs;
    std::unordered_map<std::int64_t, std::size_t> places;
    Statement heads(m_connection, "list_jobs_strung_between");
    runBetween(heads, from, to);
    while (heads.next()) {
        const Row row(heads, "job");
        places.emplace(row.wide("id"), jobs.size());
        jobs.push_back({.id = row.id<JobId>(),
                        .number = row.wide("number"),
                        .customer = row.text("customer_name"),
                        .frame = row.text("frame_name"),
                        .strung = row.instant("strung_at"),
                        .charges = {},
                        .cuts = {}});
    }
    Statement charges(m_connection, "list_charges_of_strung_between");
    runBetween(charges, from, to);
    while (charges.next()) {
        jobs.at(places.at(charges.integer("job_id"))).charges.push_back(chargeIn(charges));
    }
    Statement cuts(m_connection, "list_cuts_of_strung_between");
    runBetween(cuts, from, to);
    while (cuts.next()) {
        const Row row(cuts, "movement");
        jobs.at(places.at(row.wide("job_id")))
            .cuts.push_back({.length = -row.length("change_mm"),
                             .landedCost = Money::fromMinor(row.wide("landed_minor"), row.currency()),
                             .nominal = row.length("nominal_mm")});
    }
    return jobs;
}

std::vector<desk::ScrappedEnd> SqlReports::scrap(Instant from, Instant to) {
    Statement statement(m_connection, "list_scrap_of_closed_between");
    runBetween(statement, from, to);
    std::vector<desk::ScrappedEnd> ends;
    while (statement.next()) {
        const Row row(statement, "lot");
        ends.push_back({.tag = row.text("tag"),
                        .string = row.text("code"),
                        .length = row.length("scrap_mm"),
                        .landedCost = Money::fromMinor(row.wide("landed_minor"), row.currency()),
                        .nominal = row.length("nominal_mm")});
    }
    return ends;
}

} // namespace rw::sql
