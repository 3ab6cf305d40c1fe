// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/scene_steps.h"

#include "ui/bench/bench_station.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/shell/first_day_sheet.h"
#include "ui/stockroom/delivery_sheet.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/widgets/count_edit.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/tension_edit.h"

#include <QKeyEvent>

namespace rw::desktop {

namespace {
void pickRacket(ui::MainWindow& window, int row) {
    auto* finder = window.counter()->intake()->racketFinder();
    for (int i = 0; i < row; ++i) {
        press(finder->line(), Qt::Key_Down);
    }
    press(finder->line(), Qt::Key_Return);
}

/// Petra's racket, logged and chosen at the bench.
void petraAtTheBench(ui::MainWindow& window) {
    petraAsLastTime(window);
    window.counter()->intake()->log();
    window.goTo(QStringLiteral("bench"));
    auto* bench = window.bench();
    const auto& queue = bench->presenter().queue();
    for (const auto& line : queue) {
        if (line.customer == "Petra Lindobi" && line.asked.mains.hundredths() == 5200) {
            bench->presenter().select(line.id);
        }
    }
    bench->refresh();
    bench->machines()->setCurrentIndex(bench->machines()->count() - 1);
}
} // namespace

void type(QLineEdit* line, const QString& text) {
    line->setFocus(Qt::OtherFocusReason);
    line->selectAll();
    for (const QChar letter : text) {
        QKeyEvent down(QEvent::KeyPress, 0, Qt::NoModifier, QString(letter));
        QApplication::sendEvent(line, &down);
    }
}

void press(QWidget* widget, Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QKeyEvent down(QEvent::KeyPress, key, modifiers);
    QApplication::sendEvent(widget, &down);
}

void findPerson(ui::MainWindow& window, const QString& text) {
    auto* finder = window.counter()->intake()->personFinder();
    type(finder->line(), text);
    press(finder->line(), Qt::Key_Return);
}

void petraAsLastTime(ui::MainWindow& window) {
    auto* sheet = window.counter()->intake();
    findPerson(window, QStringLiteral("417"));
    pickRacket(window, 1); // her other one was here last
    sheet->repeatLast(false);
    type(sheet->mainsTension(), QStringLiteral("-2 lb"));
    type(sheet->crossesTension(), QStringLiteral("-2 lb"));
    sheet->note()->setFocus(Qt::TabFocusReason);
}

QWidget* toBench(ui::MainWindow& window, int steps) {
    petraAtTheBench(window);
    for (int i = 0; i < steps; ++i) {
        window.bench()->next();
    }
    return &window;
}

void fillDelivery(ui::MainWindow& window) {
    window.goTo(QStringLiteral("stockroom"));
    auto* stockroom = window.stockroom();
    stockroom->openReceive();
    auto* sheet = stockroom->deliverySheet();
    const auto fill = [&](std::size_t line, int string, const char* count, LotKind kind, const char* length,
                          const char* price) {
        auto& row = sheet->row(line);
        row.strings()->setCurrentIndex(string);
        type(row.count(), QString::fromLatin1(count));
        row.kinds()->setCurrentIndex(kind == LotKind::Packet ? 1 : 0);
        type(row.length(), QString::fromLatin1(length));
        type(row.price(), QString::fromLatin1(price));
    };
    fill(0, 1, "2", LotKind::Reel, "200 m", "110");
    fill(1, 2, "1", LotKind::Reel, "200 m", "140");
    fill(2, 1, "12", LotKind::Packet, "12 m", "9");
    type(sheet->supplier(), QStringLiteral("Northgate String Company"));
    type(sheet->shipping(), QStringLiteral("15"));
}

void receiveDelivery(ui::MainWindow& window) {
    fillDelivery(window);
    press(window.stockroom()->deliverySheet()->shipping(), Qt::Key_Tab);
    window.stockroom()->presenter().receive(*window.stockroom()->deliverySheet()->parcel());
}

void setUpShop(ui::MainWindow& window) {
    auto* page = window.firstDay();
    type(page->person(), QStringLiteral("Oriel Tamm"));
    type(page->labourLine(), QStringLiteral("14"));
    press(page->shopName(), Qt::Key_Return, Qt::ControlModifier);
}

} // namespace rw::desktop
