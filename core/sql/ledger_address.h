// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/desk/port/ledger.h"

#include <memory>
#include <string>
#include <string_view>

namespace rw::sql {

/// Where a ledger is: the path of a file, or a postgresql:// address.
class LedgerAddress {
public:
    enum class Engine { Sqlite, Postgres };
    /// Missing {what: ledger} for an empty one; Unreadable for an address that is not one.
    [[nodiscard]] static Result<LedgerAddress> parse(std::string_view text);
    [[nodiscard]] Engine engine() const { return m_engine; }
    [[nodiscard]] const std::string& text() const { return m_text; } ///< as given
    [[nodiscard]] std::string withoutPassword() const;               ///< for people and logs

private:
    LedgerAddress(Engine engine, std::string text)
        : m_engine(engine)
        , m_text(std::move(text)) {}
    Engine m_engine;
    std::string m_text;
};

enum class IfMissing { Create, Refuse };

/// Opens a ledger for the calling thread, creating and migrating it as needed. A missing file is created with mode
/// 0600. Refusals, with nothing touched: LedgerForeign (not a ledger of this program), LedgerNewer, LedgerDamaged,
/// LedgerUnreachable (a directory, no such folder, no server), LedgerNotWritable, LedgerEncoding, LedgerOnNetwork.
/// Throws LedgerFull when the disk has no room to create it.
[[nodiscard]] Result<std::unique_ptr<desk::Ledger>> openLedger(const LedgerAddress& address,
                                                               IfMissing ifMissing = IfMissing::Create);

} // namespace rw::sql
