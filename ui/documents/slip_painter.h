// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/documents/paper_pen.h"
#include "ui/documents/slip_words.h"

#include <QSizeF>

namespace rw::ui {

/// Puts a slip on paper of its own size; the caller's painter is already scaled to millimetres.
class SlipPainter : private PaperPen {
public:
    SlipPainter(QPainter& painter, const Palette& palette);

    static constexpr QSizeF kTag{97, 66};        ///< what A7 across leaves within its margins
    static constexpr QSizeF kTicket{95, 138};    ///< what A6 leaves
    static constexpr QSizeF kFrameLabel{58, 21}; ///< what a short piece of the roll leaves; goes inside a throat
    static constexpr QSizeF kReady = kTag;

    void paint(const TagWords& words);
    void paint(const TicketWords& words);
    void paint(const LabelWords& words);
    void paint(const ReadyWords& words);
    void cutLine(const QSizeF& around); ///< where paper is larger than the slip

private:
    /// The number as large as the slip is wide, and beside it its code.
    void number(const QString& number, std::int64_t tag);
    /// A name, written a third smaller before anything of it is left out.
    void name(const QRectF& box, const QString& text, double height);
    double bill(const TicketWords& words, double top, double bottom);
};

} // namespace rw::ui
