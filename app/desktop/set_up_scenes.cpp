// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/scene_steps.h"
#include "app/desktop/station_scenes.h"
#include "ui/books/frames_page.h"
#include "ui/books/machines_page.h"
#include "ui/books/people_page.h"
#include "ui/books/person_sheet.h"
#include "ui/books/price_sheets.h"
#include "ui/books/prices_page.h"
#include "ui/books/setting_sheet.h"
#include "ui/books/shop_page.h"
#include "ui/presenter/machines_presenter.h"
#include "ui/presenter/prices_presenter.h"
#include "ui/shell/main_window.h"

#include <chrono>

namespace rw::desktop {

namespace {

void goToRow(ui::SetUpPage& page, int row) { page.list()->setCurrentIndex(page.list()->model()->index(row, 0)); }

ui::PricesPage& pricesOfTomorrow(ui::MainWindow& window) {
    auto& page = turnTo<ui::PricesPage>(window);
    page.presenter().begin(std::chrono::sys_days(page.presenter().today()) + std::chrono::days(1));
    return page;
}

std::vector<Scene> priceScenes() {
    return {
        {QStringLiteral("prices"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = pricesOfTomorrow(window);
             page.back();
             return &window;
         }},
        {QStringLiteral("prices-new-list"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::PricesPage>(window).openNew();
             return &window;
         }},
        {QStringLiteral("prices-list"), true,
         [](ui::MainWindow& window) -> QWidget* {
             pricesOfTomorrow(window);
             return &window;
         }},
        {QStringLiteral("prices-line"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::PricesPage>(window);
             page.openCurrent();
             page.openCurrent();
             return &window;
         }},
        {QStringLiteral("prices-extra-refused"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = pricesOfTomorrow(window);
             page.openNew();
             page.lineSheet()->showRefusal(Refusal(Code::Missing, {{"what", "extra"}}));
             return &window;
         }},
        {QStringLiteral("prices-string"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = pricesOfTomorrow(window);
             goToRow(page, 3);
             page.openCurrent();
             return &window;
         }},
        {QStringLiteral("prices-tax"), true,
         [](ui::MainWindow& window) -> QWidget* {
             pricesOfTomorrow(window).openTax();
             return &window;
         }},
    };
}

std::vector<Scene> peopleScenes() {
    return {
        {QStringLiteral("people"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::PeoplePage>(window);
             return &window;
         }},
        {QStringLiteral("people-change"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::PeoplePage>(window).openCurrent();
             return &window;
         }},
        {QStringLiteral("people-refused"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::PeoplePage>(window);
             page.openNew();
             page.personSheet()->showRefusal(
                 Refusal(Code::ImpossibleValue,
                         {{"key", "name"}, {"text", "Oriel Tamm"}, {"expected", "a name that nobody else here has"}}));
             return &window;
         }},
        {QStringLiteral("machines"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::MachinesPage>(window);
             page.presenter().retire(page.presenter().machines().back());
             return &window;
         }},
        {QStringLiteral("machines-change"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::MachinesPage>(window).openCurrent();
             return &window;
         }},
    };
}

std::vector<Scene> frameScenes() {
    return {
        {QStringLiteral("frames"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::FramesPage>(window);
             return &window;
         }},
        {QStringLiteral("frames-one"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::FramesPage>(window);
             goToRow(page, 1);
             page.openCurrent();
             return &window;
         }},
        {QStringLiteral("frames-change"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::FramesPage>(window);
             goToRow(page, 1);
             page.openCurrent();
             page.openCurrent();
             return &window;
         }},
        {QStringLiteral("frames-cuts-told"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::FramesPage>(window);
             goToRow(page, 1);
             page.openNeeds();
             return &window;
         }},
        {QStringLiteral("frames-usual-cut"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::FramesPage>(window);
             goToRow(page, 1);
             page.openCurrent();
             page.openNew();
             return &window;
         }},
    };
}

std::vector<Scene> shopScenes() {
    return {
        {QStringLiteral("shop"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::ShopPage>(window);
             return &window;
         }},
        {QStringLiteral("shop-refused"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::ShopPage>(window);
             goToRow(page, 9);
             page.openCurrent();
             page.settingSheet()->showRefusal(
                 Refusal(Code::Unreadable, {{"what", "minutes.per-job"}, {"text", "soon"}}));
             return &window;
         }},
    };
}

} // namespace

std::vector<Scene> setUpScenes() { return together({priceScenes(), peopleScenes(), frameScenes(), shopScenes()}); }

} // namespace rw::desktop
