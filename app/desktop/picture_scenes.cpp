// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/picture_scenes.h"

#include "app/desktop/other_station_scenes.h"
#include "app/desktop/set_up_scenes.h"
#include "ui/bench/bench_station.h"
#include "ui/bench/lost_strip.h"
#include "ui/books/books_page.h"
#include "ui/books/books_station.h"
#include "ui/books/open_page.h"
#include "ui/books/pin_page.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/new_frame_form.h"
#include "ui/counter/new_person_form.h"
#include "ui/counter/rack_sheet.h"
#include "ui/counter/string_choice.h"
#include "ui/counter/to_be_strung_sheet.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/shell/first_day_sheet.h"
#include "ui/shell/guide_window.h"
#include "ui/shell/history_sheet.h"
#include "ui/shell/main_window.h"
#include "ui/stockroom/delivery_sheet.h"
#include "ui/stockroom/keep_strip.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/widgets/count_edit.h"
#include "ui/widgets/discount_edit.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/tension_edit.h"

#include <QApplication>
#include <QKeyEvent>

namespace rw::desktop {

namespace {

/// Types as at the keyboard, replacing what stands in the line.
void type(QLineEdit* line, const QString& text) {
    line->setFocus(Qt::OtherFocusReason);
    line->selectAll();
    for (const QChar letter : text) {
        QKeyEvent down(QEvent::KeyPress, 0, Qt::NoModifier, QString(letter));
        QApplication::sendEvent(line, &down);
    }
}

void press(QWidget* widget, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QKeyEvent down(QEvent::KeyPress, key, modifiers);
    QApplication::sendEvent(widget, &down);
}

void findPerson(ui::MainWindow& window, const QString& text) {
    auto* finder = window.counter()->intake()->personFinder();
    type(finder->line(), text);
    press(finder->line(), Qt::Key_Return);
}

void pickRacket(ui::MainWindow& window, int row) {
    auto* finder = window.counter()->intake()->racketFinder();
    for (int i = 0; i < row; ++i) {
        press(finder->line(), Qt::Key_Down);
    }
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

void junAboveTheMark(ui::MainWindow& window) {
    auto* sheet = window.counter()->intake();
    findPerson(window, QStringLiteral("jun"));
    sheet->repeatLast(false);
    type(sheet->mainsTension(), QStringLiteral("28"));
    type(sheet->crossesTension(), QStringLiteral("30"));
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

QWidget* toBench(ui::MainWindow& window, int steps) {
    petraAtTheBench(window);
    for (int i = 0; i < steps; ++i) {
        window.bench()->next();
    }
    return &window;
}

/// A parcel as it is being entered: two reels, another, and a box of packets.
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

void receiveBox(ui::MainWindow& window) {
    fillDelivery(window);
    press(window.stockroom()->deliverySheet()->shipping(), Qt::Key_Tab);
    window.stockroom()->presenter().receive(*window.stockroom()->deliverySheet()->parcel());
}

void keepPetrasReel(ui::MainWindow& window) {
    window.goTo(QStringLiteral("stockroom"));
    window.stockroom()->openKeep();
    auto* strip = window.stockroom()->keepStrip();
    type(strip->finder()->line(), QStringLiteral("417"));
    press(strip->finder()->line(), Qt::Key_Return);
    strip->strings()->setCurrentIndex(1);
    type(strip->length(), QStringLiteral("100"));
    if (const auto receipt = strip->receipt()) {
        window.stockroom()->presenter().receive(*receipt);
    }
}

std::vector<Scene> counterScenes() {
    return {
        {QStringLiteral("counter-empty"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.message()->hide();
             return &window;
         }},
        {QStringLiteral("counter-finding"), true,
         [](ui::MainWindow& window) -> QWidget* {
             type(window.counter()->intake()->personFinder()->line(), QStringLiteral("an"));
             return &window;
         }},
        {QStringLiteral("counter-rackets"), true,
         [](ui::MainWindow& window) -> QWidget* {
             findPerson(window, QStringLiteral("417"));
             return &window;
         }},
        {QStringLiteral("counter-as-last-time"), true,
         [](ui::MainWindow& window) -> QWidget* {
             petraAsLastTime(window);
             return &window;
         }},
        {QStringLiteral("counter-above-the-mark"), true,
         [](ui::MainWindow& window) -> QWidget* {
             junAboveTheMark(window);
             return &window;
         }},
        {QStringLiteral("counter-terms"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto* sheet = window.counter()->intake();
             petraAsLastTime(window);
             type(sheet->mustBy(), QStringLiteral("11:30"));
             type(sheet->discount(), QStringLiteral("10 %"));
             type(sheet->reason(), QStringLiteral("team"));
             type(sheet->cameWith(), QStringLiteral("cover, one grip"));
             type(sheet->remarks(), QStringLiteral("bumper worn at 2 o'clock"));
             return &window;
         }},
        {QStringLiteral("counter-removing"), true,
         [](ui::MainWindow& window) -> QWidget* {
             findPerson(window, QStringLiteral("ferreday"));
             window.counter()->intake()->askRemoval();
             return &window;
         }},
        {QStringLiteral("counter-to-be-strung"), true,
         [](ui::MainWindow& window) -> QWidget* {
             junAboveTheMark(window);
             window.counter()->intake()->log();
             findPerson(window, QStringLiteral("jun"));
             window.counter()->showToBeStrung();
             return &window;
         }},
        {QStringLiteral("counter-agreeing"), true,
         [](ui::MainWindow& window) -> QWidget* {
             junAboveTheMark(window);
             window.counter()->intake()->log();
             findPerson(window, QStringLiteral("jun"));
             window.counter()->showToBeStrung();
             press(window.counter()->toBeStrung()->list(), Qt::Key_A);
             return &window;
         }},
        {QStringLiteral("counter-other-tensions"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.counter()->showToBeStrung();
             press(window.counter()->toBeStrung()->list(), Qt::Key_T);
             return &window;
         }},
        {QStringLiteral("counter-unreadable"), true,
         [](ui::MainWindow& window) -> QWidget* {
             petraAsLastTime(window);
             auto* sheet = window.counter()->intake();
             type(sheet->mainsTension(), QStringLiteral("abc"));
             sheet->crossesTension()->setFocus(Qt::TabFocusReason);
             return &window;
         }},
        {QStringLiteral("counter-new-person"), true,
         [](ui::MainWindow& window) -> QWidget* {
             findPerson(window, QStringLiteral("Zoë Marchbanks"));
             return &window;
         }},
        {QStringLiteral("counter-new-frame"), true,
         [](ui::MainWindow& window) -> QWidget* {
             findPerson(window, QStringLiteral("417"));
             auto* sheet = window.counter()->intake();
             type(sheet->racketFinder()->line(), QStringLiteral("Fennel Prow 102"));
             press(sheet->racketFinder()->line(), Qt::Key_Return);
             return &window;
         }},
        {QStringLiteral("counter-logged"), true,
         [](ui::MainWindow& window) -> QWidget* {
             petraAsLastTime(window);
             window.counter()->intake()->log();
             return &window;
         }},
        {QStringLiteral("counter-rack"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.counter()->showRack();
             return &window;
         }},
        {QStringLiteral("counter-told"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.counter()->showRack();
             press(window.counter()->rack()->list(), Qt::Key_Down);
             press(window.counter()->rack()->list(), Qt::Key_T);
             return &window;
         }},
        {QStringLiteral("counter-unpaid"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto* rack = window.counter()->rack();
             window.counter()->showRack();
             press(rack->list(), Qt::Key_Down);
             press(rack->list(), Qt::Key_Return);
             rack->way()->setCurrentIndex(2); // on account
             press(rack->takenBy(), Qt::Key_Return);
             window.counter()->showUnpaid();
             press(rack->list(), Qt::Key_Down);
             press(rack->list(), Qt::Key_Return);
             return &window;
         }},
        {QStringLiteral("counter-hand-over"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.counter()->showRack();
             press(window.counter()->rack()->list(), Qt::Key_Down);
             press(window.counter()->rack()->list(), Qt::Key_Return);
             return &window;
         }},
    };
}

std::vector<Scene> benchScenes() {
    return {
        {QStringLiteral("bench-next"), true, [](ui::MainWindow& window) { return toBench(window, 0); }},
        {QStringLiteral("bench-taken"), true, [](ui::MainWindow& window) { return toBench(window, 1); }},
        {QStringLiteral("bench-cutting"), true, [](ui::MainWindow& window) { return toBench(window, 2); }},
        {QStringLiteral("bench-cut"), true, [](ui::MainWindow& window) { return toBench(window, 3); }},
        {QStringLiteral("bench-lost"), true,
         [](ui::MainWindow& window) {
             toBench(window, 3);
             window.bench()->openLost();
             return static_cast<QWidget*>(&window);
         }},
        {QStringLiteral("bench-finishing"), true, [](ui::MainWindow& window) { return toBench(window, 4); }},
        {QStringLiteral("bench-strung"), true, [](ui::MainWindow& window) { return toBench(window, 5); }},
    };
}

void setUpShop(ui::MainWindow& window) {
    auto* page = window.firstDay();
    type(page->person(), QStringLiteral("Oriel Tamm"));
    type(page->labourLine(), QStringLiteral("14"));
    press(page->shopName(), Qt::Key_Return, Qt::ControlModifier);
}

/// The books, turned to the page of that number, with the keyboard on it.
ui::BooksPage* toBooks(ui::MainWindow& window, int page) {
    window.goTo(QStringLiteral("books"));
    auto* opened = window.books()->pages()[page];
    window.books()->open(opened, true);
    return opened;
}

std::vector<Scene> booksScenes() {
    return {
        {QStringLiteral("books-contents"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("books"));
             return &window;
         }},
        {QStringLiteral("books-open"), true,
         [](ui::MainWindow& window) -> QWidget* {
             toBooks(window, 0);
             return &window;
         }},
        {QStringLiteral("books-takings"), true,
         [](ui::MainWindow& window) -> QWidget* {
             toBooks(window, 1);
             return &window;
         }},
        {QStringLiteral("books-earned"), true,
         [](ui::MainWindow& window) -> QWidget* {
             toBooks(window, 2);
             return &window;
         }},
        {QStringLiteral("books-earned-hidden"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto* page = qobject_cast<ui::PinPage*>(toBooks(window, 4));
             type(page->pin(), QStringLiteral("4417"));
             type(page->again(), QStringLiteral("4417"));
             page->keys().front()->trigger();
             window.goTo(QStringLiteral("counter"));
             toBooks(window, 2);
             return &window;
         }},
        {QStringLiteral("books-as-files"), true,
         [](ui::MainWindow& window) -> QWidget* {
             toBooks(window, 3);
             return &window;
         }},
        {QStringLiteral("books-pin"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto* page = qobject_cast<ui::PinPage*>(toBooks(window, 4));
             type(page->pin(), QStringLiteral("4417"));
             type(page->again(), QStringLiteral("4471"));
             page->keys().front()->trigger();
             return &window;
         }},
        {QStringLiteral("books-first-day-open"), false,
         [](ui::MainWindow& window) -> QWidget* {
             setUpShop(window);
             toBooks(window, 0);
             return &window;
         }},
        {QStringLiteral("books-first-day-takings"), false,
         [](ui::MainWindow& window) -> QWidget* {
             setUpShop(window);
             toBooks(window, 1);
             return &window;
         }},
        {QStringLiteral("books-first-day-earned"), false,
         [](ui::MainWindow& window) -> QWidget* {
             setUpShop(window);
             toBooks(window, 2);
             return &window;
         }},
        {QStringLiteral("books-told"), true,
         [](ui::MainWindow& window) -> QWidget* {
             qobject_cast<ui::OpenPage*>(toBooks(window, 0))->openTell();
             return &window;
         }},
        {QStringLiteral("books-paying"), true,
         [](ui::MainWindow& window) -> QWidget* {
             qobject_cast<ui::OpenPage*>(toBooks(window, 0))->openPay();
             return &window;
         }},
    };
}

std::vector<Scene> otherScenes() {
    return {
        {QStringLiteral("stockroom"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             return &window;
         }},
        {QStringLiteral("stockroom-receiving"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->openReceive();
             return &window;
         }},
        {QStringLiteral("stockroom-delivery"), true,
         [](ui::MainWindow& window) -> QWidget* {
             fillDelivery(window);
             return &window;
         }},
        {QStringLiteral("stockroom-delivered"), true,
         [](ui::MainWindow& window) -> QWidget* {
             receiveBox(window);
             return &window;
         }},
        {QStringLiteral("stockroom-throwing-away"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->openTakeOff();
             return &window;
         }},
        {QStringLiteral("stockroom-keeping"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->openKeep();
             return &window;
         }},
        {QStringLiteral("stockroom-kept"), true,
         [](ui::MainWindow& window) -> QWidget* {
             keepPetrasReel(window);
             return &window;
         }},
        {QStringLiteral("stockroom-life"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             press(window.stockroom()->shelf(), Qt::Key_Right);
             window.stockroom()->openLife();
             return &window;
         }},
        {QStringLiteral("counter-packet"), true,
         [](ui::MainWindow& window) -> QWidget* {
             receiveBox(window);
             window.goTo(QStringLiteral("counter"));
             petraAsLastTime(window);
             auto* mains = window.counter()->intake()->mains();
             mains->strings()->setCurrentIndex(1); // K
             mains->sources()->setCurrentIndex(mains->sources()->count() - 2);
             return &window;
         }},
        {QStringLiteral("stockroom-correcting"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->openCorrect();
             return &window;
         }},
        {QStringLiteral("stockroom-new-string"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->openNewString();
             return &window;
         }},
        {QStringLiteral("history"), true,
         [](ui::MainWindow& window) -> QWidget* {
             toBench(window, 5);
             window.goTo(QStringLiteral("counter"));
             findPerson(window, QStringLiteral("417"));
             window.showHistory({*window.counter()->person().picked()->customer.id, QStringLiteral("Petra Lindobi")});
             return &window;
         }},
        {QStringLiteral("papers"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.showPapers();
             return &window;
         }},
        {QStringLiteral("guide"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.openGuide();
             return window.guide();
         }},
        {QStringLiteral("first-day"), false, [](ui::MainWindow& window) -> QWidget* { return &window; }},
        {QStringLiteral("first-day-stockroom"), false,
         [](ui::MainWindow& window) -> QWidget* {
             auto* page = window.firstDay();
             type(page->shopName(), QStringLiteral("Harbour Lane Strings"));
             type(page->person(), QStringLiteral("Oriel Tamm"));
             type(page->labourLine(), QStringLiteral("14"));
             press(page->shopName(), Qt::Key_Return, Qt::ControlModifier);
             window.goTo(QStringLiteral("stockroom"));
             return &window;
         }},
        {QStringLiteral("first-day-bench"), false,
         [](ui::MainWindow& window) -> QWidget* {
             setUpShop(window);
             window.goTo(QStringLiteral("bench"));
             return &window;
         }},
    };
}

} // namespace

std::vector<Scene> scenes() {
    std::vector<Scene> all = counterScenes();
    for (auto& scene : benchScenes()) {
        all.push_back(std::move(scene));
    }
    for (auto& scene : otherStationScenes()) {
        all.push_back(std::move(scene));
    }
    for (auto& scene : booksScenes()) {
        all.push_back(std::move(scene));
    }
    for (auto& scene : setUpScenes()) {
        all.push_back(std::move(scene));
    }
    for (auto& scene : otherScenes()) {
        all.push_back(std::move(scene));
    }
    return all;
}

} // namespace rw::desktop
