// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/card_view.h"

#include "ui/documents/job_card.h"
#include "ui/drawing/head_drawing.h"
#include "ui/text/bench_words.h"
#include "ui/widgets/look.h"

#include <QPainter>

#include <algorithm>

namespace rw::ui {

CardView::CardView(QWidget* parent)
    : QWidget(parent) {
    setAccessibleName(tr("Job card"));
    setMinimumSize(420, 300);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void CardView::show(const std::optional<desk::JobCard>& card, const QTimeZone& zone, const QString& instead) {
    m_card = card;
    m_zone = zone;
    m_instead = instead;
    setAccessibleDescription(card ? cardInWords(*card, zone) + QLatin1Char('\n') + headDescription(card->plan)
                                  : instead);
    update();
}

void CardView::paintEvent(QPaintEvent*) {
    const Palette palette = programPalette();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), palette.paper);
    painter.setPen(QPen(palette.rule, 1));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    const QRectF inner = QRectF(rect()).adjusted(22, 18, -22, -18);
    if (m_card) {
        JobCardStyle style;
        style.palette = palette;
        style.zone = m_zone;
        // Before work begins; later they would take the room of the route.
        const bool uncut =
            std::ranges::none_of(m_card->pieces, [](const desk::CardPiece& piece) { return piece.piece.isCut(); });
        style.cautions =
            m_card->job.state == JobState::OnTheMachine && m_card->job.benchStep == BenchStep::LookOver && uncut;
        paintJobCard(painter, inner, *m_card, style);
        return;
    }
    painter.setPen(palette.softInk);
    painter.setFont(largeFont(*this, 1.3));
    painter.drawText(inner, Qt::AlignCenter | Qt::TextWordWrap, m_instead);
}

} // namespace rw::ui
