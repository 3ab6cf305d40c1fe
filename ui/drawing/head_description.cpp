// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/head_drawing.h"

#include "ui/drawing/head_geometry.h"
#include "ui/text/plan_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace rw::ui {

namespace {
struct HeadDescription {
    Q_DECLARE_TR_FUNCTIONS(HeadDescription)
};
} // namespace

QString headDescription(const length::CutPlan& plan) {
    const HeadGeometry head(plan);
    QStringList sentences{HeadDescription::tr("The head of the frame with %1 mains and %2 crosses, %3.")
                              .arg(QString::number(head.mains()), QString::number(head.crosses()), routeName(plan))};
    sentences << routeLines(plan);
    return sentences.join(QLatin1Char(' '));
}

} // namespace rw::ui
