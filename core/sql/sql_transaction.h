// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/sql/repositories/sql_customers.h"
#include "core/sql/repositories/sql_frames.h"
#include "core/sql/repositories/sql_jobs.h"
#include "core/sql/repositories/sql_lots.h"
#include "core/sql/repositories/sql_own_cuts.h"
#include "core/sql/repositories/sql_price_lists.h"
#include "core/sql/repositories/sql_reports.h"
#include "core/sql/repositories/sql_shop.h"
#include "core/sql/repositories/sql_strings.h"
#include "core/sql/repositories/sql_supply.h"
#include "core/sql/repositories/sql_weighings.h"
#include "core/sql/work.h"

namespace rw::sql {

/// A transaction with the repositories that speak in it.
class SqlTransaction final : public desk::Transaction {
public:
    SqlTransaction(Connection& connection, Work work, KnownPeople& people, desk::Access access)
        : m_work(std::move(work))
        , m_people(people)
        , m_lasts(access == desk::Access::Read) // nothing can be taken back of what was only read
        , m_customers(connection, people)
        , m_frames(connection)
        , m_strings(connection)
        , m_lots(connection)
        , m_weighings(connection)
        , m_jobs(connection)
        , m_priceLists(connection)
        , m_shop(connection)
        , m_reports(connection)
        , m_supply(connection)
        , m_ownCuts(connection) {}

    ~SqlTransaction() override {
        if (m_lasts) {
            m_people.keep();
        } else {
            m_people.takeBack();
        }
    }

    desk::Customers& customers() override { return m_customers; }
    desk::Frames& frames() override { return m_frames; }
    desk::Strings& strings() override { return m_strings; }
    desk::Lots& lots() override { return m_lots; }
    desk::Weighings& weighings() override { return m_weighings; }
    desk::Jobs& jobs() override { return m_jobs; }
    desk::PriceLists& priceLists() override { return m_priceLists; }
    desk::Shop& shop() override { return m_shop; }
    desk::Reports& reports() override { return m_reports; }
    desk::OwnCuts& ownCuts() override { return m_ownCuts; }
    desk::Supply& supply() override { return m_supply; }
    void commit() override {
        m_work.commit();
        m_lasts = true;
    }

private:
    Work m_work;
    KnownPeople& m_people;
    bool m_lasts; ///< what was read in it
    SqlCustomers m_customers;
    SqlFrames m_frames;
    SqlStrings m_strings;
    SqlLots m_lots;
    SqlWeighings m_weighings;
    SqlJobs m_jobs;
    SqlPriceLists m_priceLists;
    SqlShop m_shop;
    SqlReports m_reports;
    SqlSupply m_supply;
    SqlOwnCuts m_ownCuts;
};

} // namespace rw::sql
