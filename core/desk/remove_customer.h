// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

namespace rw::desk {

/// Erases what the ledger knows of a person, on their request: name, contacts, notes, who agreed and who collected.
/// What the books need stays and hangs on the id alone: rackets with their marks, jobs, cuts, payments, and charges
/// with their labels (the reason of a discount is one: it must name nobody). RacketStillHere {jobs, lots} while a
/// racket or string of theirs is in the shop; NotFound. Removed twice is removed once.
[[nodiscard]] Result<void> removeCustomer(Transaction& ledger, CustomerId customer, Instant now);

} // namespace rw::desk
