// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/weight_edit.h"

#include "core/units/decimal.h"

#include <QLocale>

namespace rw::ui {

namespace {
const std::string kWhat = "weight";
} // namespace

WeightEdit::WeightEdit(QWidget* parent)
    : ValueEdit(parent) {
    setPlaceholderText(tr("g/m"));
}

void WeightEdit::setValue(const std::optional<std::int64_t>& milligramsPerMetre) {
    setText(milligramsPerMetre
                ? tr("%1 g/m").arg(QLocale().toString(static_cast<double>(*milligramsPerMetre) / 1000.0, 'g', 6))
                : QString());
}

std::optional<std::int64_t> WeightEdit::readable() const {
    const auto value = milligramsPerMetre();
    return value ? std::optional(*value) : std::nullopt;
}

Result<std::int64_t> WeightEdit::milligramsPerMetre() const {
    const std::string typed = text().trimmed().toStdString();
    const auto decimal = parseDecimal(kWhat, typed);
    if (!decimal) {
        return tl::unexpected<Refusal>(decimal.error());
    }
    const bool gramsAMetre = decimal->rest.empty() || decimal->rest == "g" || decimal->rest == "g/m";
    if (!gramsAMetre || decimal->sign == Decimal::Sign::Minus) {
        return refuse(Code::Unreadable, {{"what", kWhat}, {"text", typed}});
    }
    return scaledTo(3, *decimal, kWhat, typed);
}

std::optional<Refusal> WeightEdit::problemWith() const {
    const auto value = milligramsPerMetre();
    return value ? std::nullopt : std::optional(value.error());
}

Refusal WeightEdit::missing() const { return Refusal(Code::Missing, {{"what", kWhat}}); }

void WeightEdit::writeOut() { setValue(readable()); }

} // namespace rw::ui
