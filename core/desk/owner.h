// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>
#include <string>
#include <vector>

// What only the owner sees: purchase prices, costs, margins. Without a PIN everybody does.
namespace rw::desk {

[[nodiscard]] Result<bool> hasOwnerPin(Transaction& ledger);
/// Whether that is the owner's PIN; anything is while there is none. Slow by intent, see OwnerPin.
[[nodiscard]] Result<bool> isOwnerPin(Transaction& ledger, std::string_view typed);

struct ChangePin {
    std::string current;            ///< as typed; not looked at while the shop has none
    std::optional<std::string> pin; ///< the new one; nothing: none from now on
};
/// A change that may be made: what is kept then, and what must still be kept for it.
struct PreparedPin {
    std::string hash; ///< "" for none
    std::string before;
};
/// The slow half, which writes nothing and keeps nobody from writing. Nothing when the current PIN is another; what
/// OwnerPin::tryParse refuses of the new one.
[[nodiscard]] Result<std::optional<PreparedPin>> preparePin(Transaction& ledger, const ChangePin& change);
/// ChangedMeanwhile {what} when somebody else changed it since.
[[nodiscard]] Result<void> keepPin(Transaction& ledger, const PreparedPin& pin);

/// The table as anybody may see it.
[[nodiscard]] LedgerTable withoutOwnersColumns(const LedgerTable& table);
/// Everything the ledger holds, table by table; without what is for the owner alone unless `forOwner`.
[[nodiscard]] Result<std::vector<LedgerTable>> everything(Transaction& ledger, bool forOwner);

} // namespace rw::desk
