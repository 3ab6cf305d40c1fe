// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/scene_steps.h"
#include "app/desktop/station_scenes.h"
#include "ui/counter/counter_station.h"
#include "ui/presenter/person_presenter.h"
#include "ui/shell/first_day_sheet.h"
#include "ui/shell/guide_window.h"
#include "ui/shell/main_window.h"

namespace rw::desktop {

std::vector<Scene> windowScenes() {
    return {
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
             type(window.firstDay()->shopName(), QStringLiteral("Harbour Lane Strings"));
             setUpShop(window);
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

} // namespace rw::desktop
