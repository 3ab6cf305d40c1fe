// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/books_station.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QLineEdit>
#include <QString>

// What is done in a window before a picture is taken of it.
namespace rw::desktop {

/// Types as at the keyboard, replacing what stands in the line.
void type(QLineEdit* line, const QString& text);
void press(QWidget* widget, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);

/// Somebody at the counter, picked if nobody else is found by that.
void findPerson(ui::MainWindow& window, const QString& text);
/// Petra's racket at the counter as last time, two pounds looser.
void petraAsLastTime(ui::MainWindow& window);
/// The same racket, logged and chosen at the bench, so many steps further.
QWidget* toBench(ui::MainWindow& window, int steps);

/// A parcel as it is being entered: two reels, another, and a box of packets.
void fillDelivery(ui::MainWindow& window);
void receiveDelivery(ui::MainWindow& window);

void setUpShop(ui::MainWindow& window); ///< fills the first day in and begins

/// The books' page of that type, with the keyboard on it.
template<class Page>
Page& turnTo(ui::MainWindow& window) {
    window.goTo(QStringLiteral("books"));
    for (auto* page : window.books()->pages()) {
        if (auto* wanted = qobject_cast<Page*>(page)) {
            window.books()->open(wanted, true);
            QApplication::processEvents();
            return *wanted;
        }
    }
    qFatal("the books have no such page");
}

} // namespace rw::desktop
