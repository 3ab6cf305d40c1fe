// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/look.h"

#include <QApplication>
#include <QHeaderView>
#include <QPainter>
#include <QTableView>
#include <QWidget>

namespace rw::ui {

QPalette toQPalette(const Palette& palette) {
    QPalette qt;
    qt.setColor(QPalette::Window, palette.shade);
    qt.setColor(QPalette::WindowText, palette.ink);
    qt.setColor(QPalette::Base, palette.paper);
    qt.setColor(QPalette::AlternateBase, palette.shade);
    qt.setColor(QPalette::Text, palette.ink);
    qt.setColor(QPalette::Button, palette.paper);
    qt.setColor(QPalette::ButtonText, palette.ink);
    qt.setColor(QPalette::BrightText, palette.accent);
    qt.setColor(QPalette::PlaceholderText, palette.softInk);
    qt.setColor(QPalette::ToolTipBase, palette.paper);
    qt.setColor(QPalette::ToolTipText, palette.ink);
    qt.setColor(QPalette::Mid, palette.rule);
    qt.setColor(QPalette::Light, palette.paper);
    qt.setColor(QPalette::Midlight, palette.shade);
    qt.setColor(QPalette::Dark, palette.rule);
    qt.setColor(QPalette::Shadow, palette.softInk);
    qt.setColor(QPalette::Highlight, palette.accent);
    qt.setColor(QPalette::HighlightedText, palette.onAccent);
    qt.setColor(QPalette::Link, palette.accent);
    qt.setColor(QPalette::LinkVisited, palette.accent);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        qt.setColor(QPalette::Disabled, role, palette.softInk);
    }
    return qt;
}

Palette programPalette() {
    // A style sheet waters a widget's own palette down, so the colours come from where they were set.
    const QPalette qt = QApplication::palette();
    Palette palette = Palette::light();
    palette.paper = qt.color(QPalette::Active, QPalette::Base);
    palette.shade = qt.color(QPalette::Active, QPalette::AlternateBase);
    palette.ink = qt.color(QPalette::Active, QPalette::Text);
    palette.softInk = qt.color(QPalette::Active, QPalette::PlaceholderText);
    palette.rule = qt.color(QPalette::Active, QPalette::Mid);
    palette.accent = qt.color(QPalette::Active, QPalette::Highlight);
    palette.onAccent = qt.color(QPalette::Active, QPalette::HighlightedText);
    return palette;
}

QString styleSheet(const Palette& palette) {
    // A line to write on is a ruled line; where the keyboard is, the line is thick, which is seen without colour too.
    return QStringLiteral(R"(
QLineEdit, QComboBox, QSpinBox {
    background: %1; border: 0; border-bottom: 1px solid %4;
    padding: 5px 4px 5px 4px; selection-background-color: %6; selection-color: %7;
}
QLineEdit:focus, QComboBox:focus, QSpinBox:focus { border-bottom: 3px solid %6; padding-bottom: 3px; background: %2; }
QLineEdit:disabled, QComboBox:disabled, QSpinBox:disabled { border-bottom: 1px dotted %4; }
QSpinBox::up-button, QSpinBox::down-button { width: 0; border: 0; }
QComboBox::drop-down { border: 0; width: 20px; }
QComboBox::down-arrow { image: none; }
QComboBox QAbstractItemView { background: %1; border: 1px solid %4;
    selection-background-color: %6; selection-color: %7; outline: 0; }
QPushButton { background: %1; color: %3; border: 1px solid %5; border-radius: 3px; padding: 7px 16px; }
QPushButton:focus { border: 3px solid %6; padding: 5px 14px; }
QPushButton:default { background: %3; color: %1; border-color: %3; }
QPushButton:default:focus { border: 3px solid %6; }
QPushButton:disabled { color: %5; border-color: %4; background: %2; }
QCheckBox { spacing: 8px; padding: 4px; border-bottom: 1px solid transparent; }
QCheckBox::indicator { width: 12px; height: 12px; border: 1px solid %5; background: %1; }
QCheckBox::indicator:checked { background: %3; border: 3px solid %1; outline: 1px solid %5; }
QCheckBox:focus { border-bottom: 3px solid %6; padding-bottom: 2px; }
QListView, QTableView, QTextBrowser { background: %1; border: 0; outline: 0; }
QMenuBar { background: %2; color: %3; padding: 2px 8px; }
QMenuBar::item { padding: 4px 10px; background: transparent; }
QMenuBar::item:selected { background: %1; border-bottom: 2px solid %6; }
QMenu { background: %1; color: %3; border: 1px solid %4; padding: 4px; }
QMenu::item { padding: 5px 28px 5px 18px; }
QMenu::item:selected { background: %6; color: %7; }
QMenu::item:disabled { color: %4; }
QMenu::separator { height: 1px; background: %4; margin: 4px 10px; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar::handle:vertical { background: %4; min-height: 28px; border-radius: 5px; }
QScrollBar:horizontal { background: transparent; height: 10px; margin: 0; }
QScrollBar::handle:horizontal { background: %4; min-width: 28px; border-radius: 5px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QToolTip { background: %1; color: %3; border: 1px solid %4; }
)")
        .arg(palette.paper.name(), palette.shade.name(), palette.ink.name(), palette.rule.name(),
             palette.softInk.name(), palette.accent.name(), palette.onAccent.name());
}

QFont largeFont(const QWidget& widget, double times) {
    QFont font = widget.font();
    if (font.pointSizeF() > 0) {
        font.setPointSizeF(font.pointSizeF() * times);
    } else {
        font.setPixelSize(static_cast<int>(font.pixelSize() * times));
    }
    return font;
}

void quieten(QWidget& words) {
    QPalette quiet = words.palette();
    quiet.setColor(QPalette::WindowText, quiet.color(QPalette::PlaceholderText));
    words.setPalette(quiet);
}

void readByLines(QTableView& table) {
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setTabKeyNavigation(false);
    table.setShowGrid(false);
    table.setWordWrap(false);
    table.verticalHeader()->hide();
    table.horizontalHeader()->setHighlightSections(false);
}

void paintPaper(QWidget& widget) {
    const Palette palette = programPalette();
    QPainter painter(&widget);
    painter.fillRect(widget.rect(), palette.paper);
    painter.setPen(palette.rule);
    painter.drawRect(widget.rect().adjusted(0, 0, -1, -1));
}

} // namespace rw::ui
