// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/customers/customer.h"
#include "core/frames/sport.h"
#include "core/pricing/price_list.h"
#include "core/stock/lot.h"
#include "core/units/tension.h"

#include <optional>
#include <string>
#include <string_view>

// The texts that the ledger stores for values whose own folders have no reader or no text for them. The CHECKs of
// the migrations list the same words.
namespace rw::sql {

[[nodiscard]] std::string_view contactKindText(Contact::Kind kind); ///< "phone", "email", "other"
[[nodiscard]] std::optional<Contact::Kind> contactKindFromText(std::string_view text);

[[nodiscard]] std::string_view lotKindText(LotKind kind); ///< "reel", "packet", "remnant"
[[nodiscard]] std::optional<LotKind> lotKindFromText(std::string_view text);

[[nodiscard]] std::string_view taxRuleText(TaxRule rule); ///< "included", "added"
[[nodiscard]] std::optional<TaxRule> taxRuleFromText(std::string_view text);

[[nodiscard]] std::optional<Side> storedSide(std::string_view text);       ///< as sideText() gives it
[[nodiscard]] std::optional<HoopEnd> storedHoopEnd(std::string_view text); ///< as hoopEndText() gives it
/// As unitText() gives it; unitFromText() reads what people type and takes more.
[[nodiscard]] std::optional<TensionUnit> storedUnit(std::string_view text);

/// As civilDateFromText reads it; it sorts as it counts. Precondition: a real date of the years 1 to 9999.
[[nodiscard]] std::string dateText(CivilDate date);

} // namespace rw::sql
