// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/pattern_edit.h"

#include "core/frames/pattern_text.h"

namespace rw::ui {

PatternEdit::PatternEdit(QWidget* parent)
    : ValueEdit(parent) {
    setPlaceholderText(tr("pattern"));
}

Result<Pattern> PatternEdit::value() const {
    if (isBlank()) {
        return tl::unexpected<Refusal>(missing());
    }
    return patternFromText(text().trimmed().toStdString());
}

std::optional<Refusal> PatternEdit::problemWith() const {
    const auto pattern = value();
    return pattern ? std::nullopt : std::optional(pattern.error());
}

Refusal PatternEdit::missing() const { return Refusal(Code::Missing, {{"what", "pattern"}}); }

void PatternEdit::writeOut() {
    if (const auto pattern = value()) {
        setText(tr("%1 × %2").arg(pattern->mains).arg(pattern->crosses));
    }
}

} // namespace rw::ui
