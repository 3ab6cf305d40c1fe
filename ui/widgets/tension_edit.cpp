// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/tension_edit.h"

#include "ui/text/format.h"

namespace rw::ui {

TensionEdit::TensionEdit(QWidget* parent)
    : ValueEdit(parent) {
    setDefaultUnit(TensionUnit::Pound);
}

void TensionEdit::setDefaultUnit(TensionUnit unit) {
    m_unit = unit;
    setPlaceholderText(fromUtf8(unitText(unit)));
}

void TensionEdit::setValue(const std::optional<Tension>& tension) {
    m_old = tension;
    if (tension) {
        setDefaultUnit(tension->unit());
        setText(tensionText(*tension));
    } else {
        clear();
    }
}

Result<Tension> TensionEdit::value() const {
    if (isBlank()) {
        return tl::unexpected<Refusal>(missing());
    }
    return Tension::tryParse(text().toStdString(), m_unit, m_old);
}

std::optional<Tension> TensionEdit::readable() const {
    const auto tension = value();
    return tension ? std::optional(*tension) : std::nullopt;
}

std::optional<Refusal> TensionEdit::problemWith() const {
    const auto tension = value();
    return tension ? std::nullopt : std::optional(tension.error());
}

Refusal TensionEdit::missing() const { return Refusal(Code::Missing, {{"what", "tension"}}); }

void TensionEdit::writeOut() {
    if (const auto tension = readable()) {
        setValue(tension);
    }
}

} // namespace rw::ui
