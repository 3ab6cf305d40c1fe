// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/stock/remnant_value.h"

#include <memory>

namespace rw::desk {

/// What the ends of a string are worth in this shop. Both pieces of a job come off one reel, so what is wanted next is
/// what a job takes off a lot: the last 200 of this string, mixed with the last 200 of all strings of its sport, and
/// those with what the sport's usual head needs until there are enough of them (core/stock/piece_mix.h). The shortest
/// useful piece is the sport's shortest usual one: 5.0 m for tennis, 4.0 m for squash and badminton (common practice).
/// It is worked out when the cuts have changed, in some milliseconds, and kept for who asks again on the same thread.
[[nodiscard]] std::shared_ptr<const stock::RemnantValue> remnantValueOf(Transaction& ledger,
                                                                        const StringArticle& article);

} // namespace rw::desk
