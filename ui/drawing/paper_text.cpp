// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/paper_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <cassert>

namespace rw::ui {

namespace {
// Text is laid out at this size and the painter scaled, so that its widths do not change with the scale.
constexpr int kLaidOutAt = 64;

QFont fontOf(bool bold) {
    QFont font(QStringList{QStringLiteral("DejaVu Sans"), QStringLiteral("sans-serif")});
    font.setPixelSize(kLaidOutAt);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

// Words of ten thousand characters come in; nothing wider than a page is ever shown of them.
constexpr qsizetype kMostCharacters = 2000;
} // namespace

double PaperText::width(const QString& text) const {
    return QFontMetricsF(fontOf(bold)).horizontalAdvance(text.left(kMostCharacters)) * height / kLaidOutAt;
}

QString PaperText::elided(const QString& text, double room, Qt::TextElideMode where) const {
    const QString line = text.left(kMostCharacters).simplified();
    return QFontMetricsF(fontOf(bold)).elidedText(line, where, room * kLaidOutAt / height);
}

QStringList PaperText::wrapped(const QString& text, double room, qsizetype most) const {
    const QFontMetricsF metrics(fontOf(bold));
    const double limit = room * kLaidOutAt / height;
    QStringList lines;
    QString line;
    const QString all = text.left(kMostCharacters).simplified();
    const QStringList words = all.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString longer = line.isEmpty() ? words[i] : line + QLatin1Char(' ') + words[i];
        if (metrics.horizontalAdvance(longer) <= limit) {
            line = longer;
            continue;
        }
        if (lines.size() + 1 >= most) {
            line = longer; // elided below
            for (++i; i < words.size(); ++i) {
                line += QLatin1Char(' ') + words[i];
            }
            break;
        }
        if (!line.isEmpty()) {
            lines << line;
        }
        line = words[i];
        while (metrics.horizontalAdvance(line) > limit && lines.size() + 1 < most) {
            qsizetype fits = 1;
            while (fits < line.size() && metrics.horizontalAdvance(line.left(fits + 1)) <= limit) {
                ++fits;
            }
            if (fits > 1 && line.at(fits - 1).isHighSurrogate()) {
                --fits;
            }
            lines << line.left(fits);
            line.remove(0, fits);
        }
    }
    if (!line.isEmpty()) {
        lines << metrics.elidedText(line, Qt::ElideRight, limit);
    }
    return lines;
}

void PaperText::draw(QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text) const {
    assert(height > 0);
    painter.save();
    const double scale = height / kLaidOutAt;
    painter.translate(box.topLeft());
    painter.scale(scale, scale);
    painter.setFont(fontOf(bold));
    painter.drawText(QRectF(0, 0, box.width() / scale, box.height() / scale),
                     static_cast<int>(alignment) | Qt::TextDontClip | Qt::TextSingleLine, text.left(kMostCharacters));
    painter.restore();
}

} // namespace rw::ui
