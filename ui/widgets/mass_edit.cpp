// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/mass_edit.h"

#include "ui/text/weigh_words.h"

namespace rw::ui {

namespace {
Result<Mass> read(const std::string& typed) { return Mass::tryParse(typed); }
QString write(const Mass& mass) { return massText(mass); }
} // namespace

MassEdit::MassEdit(QWidget* parent)
    : ParsedEdit("weight", read, write, parent) {
    setPlaceholderText(tr("g"));
}

} // namespace rw::ui
