// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/account.h"

namespace rw::desk {

Result<Money> accountOf(Transaction& ledger, CustomerId customer) { return ledger.reports().account(customer); }

} // namespace rw::desk
