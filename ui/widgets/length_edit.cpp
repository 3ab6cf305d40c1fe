// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/length_edit.h"

#include "ui/text/format.h"

namespace rw::ui {

LengthEdit::LengthEdit(QWidget* parent)
    : ValueEdit(parent) {
    setPlaceholderText(tr("m"));
}

void LengthEdit::setValue(const std::optional<Length>& length) {
    if (length) {
        setText(lengthText(*length));
    } else {
        clear();
    }
}

Result<Length> LengthEdit::value() const {
    if (isBlank()) {
        return tl::unexpected<Refusal>(missing());
    }
    const std::string typed = text().toStdString();
    auto length = Length::tryParse(typed);
    if (length && (length->isNegative() || (!m_mayBeZero && !length->isPositive()))) {
        return refuse(Code::OutOfRange, {{"what", std::string("length")},
                                         {"text", typed},
                                         {"lowest", std::string(m_mayBeZero ? "0 m" : "0.001 m")},
                                         {"highest", std::string("10000 m")}});
    }
    return length;
}

std::optional<Length> LengthEdit::readable() const {
    const auto length = value();
    return length ? std::optional(*length) : std::nullopt;
}

std::optional<Refusal> LengthEdit::problemWith() const {
    const auto length = value();
    return length ? std::nullopt : std::optional(length.error());
}

Refusal LengthEdit::missing() const { return Refusal(Code::Missing, {{"what", "length"}}); }

void LengthEdit::writeOut() { setValue(readable()); }

} // namespace rw::ui
