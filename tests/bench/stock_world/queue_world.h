// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace rw::world {

/// How large the queues are: pieces of mixed work, lots of which the last are nearly full reels and the others ends of
/// 5 to 45 m.
struct QueueSize {
    int fewestPieces;
    int mostPieces;
    int fewestLots;
    int mostLots;
    int stepMm;    ///< pieces are whole steps; 50 is a tape's, 1 is the worst that can be
    bool sameReel; ///< all pieces of a job off one lot
};

struct QueueResult {
    int provenInHalfASecond = 0;
    int provenInTwoSeconds = 0;
    int bestAfterFiftyMs = 0; ///< as good after 50 ms as after 2 s
    double medianMs = 0;      ///< until proven, or 2 s
    double worstMs = 0;
};

[[nodiscard]] QueueResult runQueues(const QueueSize& size, int queues, std::uint64_t seed);

} // namespace rw::world
