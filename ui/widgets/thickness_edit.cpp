// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/thickness_edit.h"

#include "core/strings/string_article.h"
#include "core/units/decimal.h"

#include <QLocale>

namespace rw::ui {

namespace {
const std::string kWhat = "thickness";
} // namespace

ThicknessEdit::ThicknessEdit(QWidget* parent)
    : ValueEdit(parent) {
    setPlaceholderText(tr("mm"));
}

void ThicknessEdit::setValue(int micrometres) {
    setText(tr("%1 mm").arg(QLocale().toString(micrometres / 1000.0, 'g', 4)));
}

Result<int> ThicknessEdit::micrometres() const {
    if (isBlank()) {
        return tl::unexpected<Refusal>(missing());
    }
    const std::string typed = text().trimmed().toStdString();
    const auto decimal = parseDecimal(kWhat, typed);
    if (!decimal) {
        return tl::unexpected<Refusal>(decimal.error());
    }
    if (!decimal->rest.empty() && decimal->rest != "mm") {
        return refuse(Code::Unreadable, {{"what", kWhat}, {"text", typed}});
    }
    const auto thousandths = scaledTo(3, *decimal, kWhat, typed);
    if (!thousandths) {
        return tl::unexpected<Refusal>(thousandths.error());
    }
    if (*thousandths < kThinnestString || *thousandths > kThickestString) {
        return refuse(
            Code::OutOfRange,
            {{"what", kWhat}, {"text", typed}, {"lowest", std::string("0.4 mm")}, {"highest", std::string("2 mm")}});
    }
    return static_cast<int>(*thousandths);
}

std::optional<Refusal> ThicknessEdit::problemWith() const {
    const auto value = micrometres();
    return value ? std::nullopt : std::optional(value.error());
}

Refusal ThicknessEdit::missing() const { return Refusal(Code::Missing, {{"what", kWhat}}); }

void ThicknessEdit::writeOut() {
    if (const auto value = micrometres()) {
        setValue(*value);
    }
}

} // namespace rw::ui
