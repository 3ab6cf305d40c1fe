// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/owner.h"

#include "core/desk/settings.h"
#include "core/owner/owner_pin.h"

#include <utility>

namespace rw::desk {

namespace {
std::string keptHash(Transaction& ledger) { return ledger.shop().setting(setting::kOwnerPin).value_or(std::string()); }

bool opens(std::string_view typed, const std::string& hash) {
    const auto pin = OwnerPin::tryParse(typed);
    return hash.empty() || (pin && pin->isThatOf(hash));
}
} // namespace

Result<bool> hasOwnerPin(Transaction& ledger) { return !keptHash(ledger).empty(); }

Result<bool> isOwnerPin(Transaction& ledger, std::string_view typed) { return opens(typed, keptHash(ledger)); }

Result<std::optional<PreparedPin>> preparePin(Transaction& ledger, const ChangePin& change) {
    PreparedPin prepared{.hash = {}, .before = keptHash(ledger)};
    if (change.pin) {
        const auto pin = OwnerPin::tryParse(*change.pin);
        if (!pin) {
            return tl::unexpected(pin.error());
        }
        if (!opens(change.current, prepared.before)) {
            return std::optional<PreparedPin>();
        }
        prepared.hash = pin->hash();
        return std::optional(std::move(prepared));
    }
    return opens(change.current, prepared.before) ? std::optional(std::move(prepared)) : std::nullopt;
}

Result<void> keepPin(Transaction& ledger, const PreparedPin& pin) {
    if (keptHash(ledger) != pin.before) {
        return refuse(Code::ChangedMeanwhile, {{"what", "PIN"}});
    }
    ledger.shop().set(setting::kOwnerPin, pin.hash);
    return {};
}

LedgerTable withoutOwnersColumns(const LedgerTable& table) {
    LedgerTable shown{table.name, {}, std::vector<std::vector<Cell>>(table.rows.size())};
    for (std::size_t column = 0; column < table.columns.size(); ++column) {
        if (table.columns[column].onlyForOwner) {
            continue;
        }
        shown.columns.push_back(table.columns[column]);
        for (std::size_t row = 0; row < table.rows.size(); ++row) {
            shown.rows[row].push_back(table.rows[row][column]);
        }
    }
    return shown;
}

Result<std::vector<LedgerTable>> everything(Transaction& ledger, bool forOwner) {
    std::vector<LedgerTable> tables = ledger.reports().tables();
    if (!forOwner) {
        for (LedgerTable& table : tables) {
            table = withoutOwnersColumns(table);
        }
    }
    return tables;
}

} // namespace rw::desk
