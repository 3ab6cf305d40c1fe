// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/count_edit.h"

namespace rw::ui {

namespace {
const std::string kWhat = "count";
} // namespace

CountEdit::CountEdit(int most, QWidget* parent)
    : ValueEdit(parent)
    , m_most(most) {}

void CountEdit::setValue(int count) { setText(QString::number(count)); }

Result<int> CountEdit::value() const {
    if (isBlank()) {
        return tl::unexpected<Refusal>(missing());
    }
    const QString typed = text().trimmed();
    bool read = false;
    const qlonglong count = typed.toLongLong(&read);
    if (!read) {
        return refuse(Code::Unreadable, {{"what", kWhat}, {"text", typed.toStdString()}});
    }
    if (count < 1 || count > m_most) {
        return refuse(Code::OutOfRange, {{"what", kWhat},
                                         {"text", typed.toStdString()},
                                         {"lowest", std::string("1")},
                                         {"highest", std::to_string(m_most)}});
    }
    return static_cast<int>(count);
}

std::optional<int> CountEdit::readable() const {
    const auto count = value();
    return count ? std::optional(*count) : std::nullopt;
}

std::optional<Refusal> CountEdit::problemWith() const {
    const auto count = value();
    return count ? std::nullopt : std::optional(count.error());
}

Refusal CountEdit::missing() const { return Refusal(Code::Missing, {{"what", kWhat}}); }

void CountEdit::writeOut() {
    if (const auto count = readable()) {
        setValue(*count);
    }
}

} // namespace rw::ui
