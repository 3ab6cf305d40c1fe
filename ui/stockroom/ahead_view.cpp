// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/ahead_view.h"

#include "core/stock/order_point.h"
#include "ui/text/ahead_words.h"
#include "ui/text/stock_words.h"
#include "ui/widgets/look.h"

#include <QFontMetricsF>
#include <QPainter>

namespace rw::ui {

AheadView::AheadView(QWidget* parent)
    : QWidget(parent) {
    setAccessibleName(tr("The stock of this string from today on"));
}

void AheadView::show(const desk::ShelfString& string) {
    m_curve.reset();
    if (string.ahead && string.ahead->isKnown()) {
        const desk::StringAhead& ahead = *string.ahead;
        const auto day = [&](const std::optional<CivilDate>& date) {
            return date ? dayToComeText(*date, ahead.today) : QString();
        };
        m_curve = CourseCurve{.jobsLeft = ahead.jobsLeft,
                              .steps = ahead.course(),
                              .orderPoint = stock::orderPoint(ahead.s),
                              .top = jobsText(ahead.jobsLeft),
                              .bottom = tr("none"),
                              .order = tr("order point: %1").arg(jobsText(ahead.s)),
                              .from = tr("today"),
                              .early = day(ahead.runOut.p10),
                              .likely = day(ahead.runOut.p50)};
        m_curve->textHeight = QFontMetricsF(font()).height() * 0.8;
    }
    setAccessibleDescription(string.ahead ? aheadSentences(string).join(QLatin1Char(' ')) : QString());
    update();
}

void AheadView::paintEvent(QPaintEvent*) {
    if (m_curve) {
        QPainter painter(this);
        drawCourseCurve(painter, QRectF(rect()).adjusted(4, 2, -6, -2), *m_curve, programPalette());
    }
}

} // namespace rw::ui
