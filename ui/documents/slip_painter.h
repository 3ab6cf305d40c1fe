// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/documents/paper_pen.h"
#include "ui/documents/slip_words.h"

#include <QSizeF>

namespace rw::ui {

/// Puts a tag or a ticket on paper of its own size; the caller's painter is already scaled to millimetres.
class SlipPainter : private PaperPen {
public:
    SlipPainter(QPainter& painter, const Palette& palette);

    static constexpr QSizeF kTag{97, 66};     ///< what A7 across leaves within its margins
    static constexpr QSizeF kTicket{95, 138}; ///< what A6 leaves

    void paint(const TagWords& words);
    void paint(const TicketWords& words);
    void cutLine(const QSizeF& around); ///< where paper is larger than the slip

private:
    double bill(const TicketWords& words, double top, double bottom);
};

} // namespace rw::ui
