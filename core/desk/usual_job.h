// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/desk/settings.h"

namespace rw::desk {

/// What a whole job usually takes of a string: the mean of its last twenty, else the usual plan of its sport. Positive.
[[nodiscard]] Length usualJob(Transaction& ledger, const StringArticle& article, const ShopSettings& settings);

} // namespace rw::desk
