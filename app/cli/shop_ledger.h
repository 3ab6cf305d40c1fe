// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/desk/port/ledger.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/ledger_address.h"

#include <QLocale>
#include <QTimeZone>

#include <memory>
#include <string>

namespace rw::cli {

/// An open ledger and what is needed to speak about it. One use case is one transaction.
class ShopLedger {
public:
    /// Refusals of openLedger. A ledger that somebody only wants to look at is not made when it is not there.
    [[nodiscard]] static Result<ShopLedger> open(const std::string& address, sql::IfMissing ifMissing);

    template<class Work>
    auto read(Work work) {
        return desk::inTransaction(*m_ledger, desk::Access::Read, work);
    }
    template<class Work>
    auto write(Work work) {
        return desk::inTransaction(*m_ledger, desk::Access::Write, work);
    }
    [[nodiscard]] desk::Ledger& ledger() { return *m_ledger; }
    [[nodiscard]] const std::string& address() const { return m_address; } ///< without a password

private:
    ShopLedger(std::unique_ptr<desk::Ledger> ledger, std::string address)
        : m_ledger(std::move(ledger))
        , m_address(std::move(address)) {}
    std::unique_ptr<desk::Ledger> m_ledger;
    std::string m_address;
};

/// The shop's time zone and the language of whoever reads.
struct Reader {
    QLocale locale;
    QTimeZone zone = QTimeZone::utc();
};
[[nodiscard]] Reader readerOf(ShopLedger& shop);

} // namespace rw::cli
