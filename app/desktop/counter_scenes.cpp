// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/scene_steps.h"
#include "app/desktop/station_scenes.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/intake_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/rack_sheet.h"
#include "ui/counter/string_choice.h"
#include "ui/counter/to_be_strung_sheet.h"
#include "ui/shell/main_window.h"
#include "ui/widgets/discount_edit.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/tension_edit.h"

namespace rw::desktop {

namespace {
void junAboveTheMark(ui::MainWindow& window) {
    auto* sheet = window.counter()->intake();
    findPerson(window, QStringLiteral("jun"));
    sheet->repeatLast(false);
    type(sheet->mainsTension(), QStringLiteral("28"));
    type(sheet->crossesTension(), QStringLiteral("30"));
}
} // namespace

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
        {QStringLiteral("counter-rackets-here"), true,
         [](ui::MainWindow& window) -> QWidget* {
             findPerson(window, QStringLiteral("castelmere")); // both of his are here
             return &window;
         }},
        {QStringLiteral("counter-as-last-time"), true,
         [](ui::MainWindow& window) -> QWidget* {
             petraAsLastTime(window);
             return &window;
         }},
        {QStringLiteral("counter-why"), true,
         [](ui::MainWindow& window) -> QWidget* {
             petraAsLastTime(window);
             window.counter()->intake()->outcome()->setWhyShown(true);
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
        {QStringLiteral("counter-packet"), true,
         [](ui::MainWindow& window) -> QWidget* {
             receiveDelivery(window);
             window.goTo(QStringLiteral("counter"));
             petraAsLastTime(window);
             auto* mains = window.counter()->intake()->mains();
             mains->strings()->setCurrentIndex(1); // K
             mains->sources()->setCurrentIndex(mains->sources()->count() - 2);
             return &window;
         }},
    };
}

} // namespace rw::desktop
