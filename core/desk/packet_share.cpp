// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/packet_share.h"

#include "core/desk/own_sets.h"
#include "core/length/packet.h"

namespace rw::desk {

bool doesTheBed(const length::CutPlan& plan, Length packet) {
    return length::judgePacket(needsOf(plan), packet) != length::PacketVerdict::NotEnough;
}

std::vector<ProposedCut> shareOut(const Lot& packet, const length::CutPlan& plan, const std::vector<ProposedCut>& cuts,
                                  Length tapeStep) {
    std::vector<ProposedCut> shared = cuts;
    if (cuts.size() == 1) {
        shared.front().cut = packet.length;
        shared.front().from = CutFrom::Packet;
        return shared;
    }
    if (cuts[0].cut + cuts[1].cut > packet.length) {
        shared.front().cut = length::shareOfPacket(needsOf(plan), packet.length, tapeStep).front();
        shared.front().from = CutFrom::Packet;
    }
    shared.back().cut = packet.length - shared.front().cut;
    shared.back().from = CutFrom::Packet;
    return shared;
}

} // namespace rw::desk
