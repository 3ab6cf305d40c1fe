// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

namespace rw::desk {

/// Writes down that somebody wanted a string of which the shop had none; it counts as a job that was wanted that day.
/// The string as it is; the same request key again changes nothing. Missing {request key}, NotFound {string};
/// ChangedMeanwhile when the key stands for another string.
[[nodiscard]] Result<StringArticle> askedForNone(Transaction& ledger, const AskedForNone& asked);

} // namespace rw::desk
