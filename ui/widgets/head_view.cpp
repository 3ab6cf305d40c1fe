// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/head_view.h"

#include "ui/drawing/head_drawing.h"
#include "ui/widgets/look.h"

#include <QPainter>

namespace rw::ui {

HeadView::HeadView(QWidget* parent)
    : QWidget(parent) {
    setAccessibleName(tr("The head, string by string"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
}

void HeadView::setPlan(const std::optional<length::CutPlan>& plan) {
    m_plan = plan;
    setAccessibleDescription(plan ? headDescription(*plan) : QString());
    update();
}

void HeadView::paintEvent(QPaintEvent*) {
    if (!m_plan) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawHead(painter, QRectF(rect()).adjusted(4, 4, -4, -4), *m_plan, {HeadDetail::Thumbnail, programPalette()});
}

} // namespace rw::ui
