// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/weigh_basis.h"

#include "core/base/named_texts.h"
#include "core/stock/weighing.h"

namespace rw::stock {

namespace {
constexpr NamedTexts<WeighBasis, 3> kBases(
    {{{WeighBasis::AgainstNew, "new"}, {WeighBasis::ByMetre, "metre"}, {WeighBasis::ByGone, "gone"}}});

Result<WeighedLength> by(WeighBasis basis, const Result<Estimate>& length) {
    return length ? Result<WeighedLength>(WeighedLength{basis, *length}) : tl::unexpected(length.error());
}
} // namespace

std::string_view weighBasisText(WeighBasis basis) { return kBases.text(basis); }
std::optional<WeighBasis> weighBasisFromText(std::string_view text) { return kBases.value(text); }

Result<WeighedLength> weighedLength(const ReelOnScale& reel) {
    if (reel.emptyG && reel.newG) {
        return by(WeighBasis::AgainstNew, lengthAgainstNew({reel.grossG, *reel.emptyG}, {reel.nominalMm, *reel.newG}));
    }
    if (reel.emptyG) {
        return by(WeighBasis::ByMetre, lengthByWeight({reel.grossG, *reel.emptyG}, reel.gramsPerMetre));
    }
    if (reel.newG) {
        return by(WeighBasis::ByGone,
                  lengthByWhatIsGone(reel.grossG, {reel.nominalMm, *reel.newG}, reel.gramsPerMetre));
    }
    return refuse(Code::Missing, {{"what", "empty spool"}});
}

} // namespace rw::stock
