// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/refused_line.h"

#include "ui/text/sentences.h"
#include "ui/widgets/margin_note.h"

namespace rw::ui {

void showBeside(const Refusal& why, std::initializer_list<RefusedLine> lines, MarginNote* otherwise) {
    for (const RefusedLine& line : lines) {
        if (why.text("what") == line.what || why.text("key") == line.what) {
            line.note->setProblem(sentenceFor(why));
            line.edit->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
    otherwise->setProblem(sentenceFor(why));
}

} // namespace rw::ui
