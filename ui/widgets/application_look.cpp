// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/application_look.h"

#include "ui/widgets/label_reading.h"
#include "ui/widgets/look.h"

#include <QApplication>
#include <QFont>
#include <QStyleFactory>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr double kSmallestText = 11; ///< points: read from where somebody stands at a counter
}

bool wantsDark(const QApplication&) {
    const QPalette palette = QApplication::palette();
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

void lookLikeReelwright(QApplication& application, const Palette& palette) {
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setPalette(toQPalette(palette));
    QFont font = QApplication::font();
    QStringList families = font.families();
    families << QStringLiteral("DejaVu Sans");
    font.setFamilies(families);
    font.setPointSizeF(std::max(font.pointSizeF(), kSmallestText));
    QApplication::setFont(font);
    application.setStyleSheet(styleSheet(palette));
    letLabelsBeRead();
}

} // namespace rw::ui
