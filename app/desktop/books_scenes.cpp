// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/scene_steps.h"
#include "app/desktop/station_scenes.h"
#include "ui/books/earned_page.h"
#include "ui/books/export_page.h"
#include "ui/books/open_page.h"
#include "ui/books/pin_page.h"
#include "ui/books/takings_page.h"
#include "ui/shell/main_window.h"

namespace rw::desktop {

std::vector<Scene> booksScenes() {
    return {
        {QStringLiteral("books-contents"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("books"));
             return &window;
         }},
        {QStringLiteral("books-open"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::OpenPage>(window);
             return &window;
         }},
        {QStringLiteral("books-takings"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::TakingsPage>(window);
             return &window;
         }},
        {QStringLiteral("books-earned"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::EarnedPage>(window);
             return &window;
         }},
        {QStringLiteral("books-earned-hidden"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::PinPage>(window);
             type(page.pin(), QStringLiteral("4417"));
             type(page.again(), QStringLiteral("4417"));
             page.keys().front()->trigger();
             window.goTo(QStringLiteral("counter"));
             turnTo<ui::EarnedPage>(window);
             return &window;
         }},
        {QStringLiteral("books-as-files"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::ExportPage>(window);
             return &window;
         }},
        {QStringLiteral("books-pin"), true,
         [](ui::MainWindow& window) -> QWidget* {
             auto& page = turnTo<ui::PinPage>(window);
             type(page.pin(), QStringLiteral("4417"));
             type(page.again(), QStringLiteral("4471"));
             page.keys().front()->trigger();
             return &window;
         }},
        {QStringLiteral("books-first-day-open"), false,
         [](ui::MainWindow& window) -> QWidget* {
             setUpShop(window);
             turnTo<ui::OpenPage>(window);
             return &window;
         }},
        {QStringLiteral("books-first-day-takings"), false,
         [](ui::MainWindow& window) -> QWidget* {
             setUpShop(window);
             turnTo<ui::TakingsPage>(window);
             return &window;
         }},
        {QStringLiteral("books-first-day-earned"), false,
         [](ui::MainWindow& window) -> QWidget* {
             setUpShop(window);
             turnTo<ui::EarnedPage>(window);
             return &window;
         }},
        {QStringLiteral("books-told"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::OpenPage>(window).openTell();
             return &window;
         }},
        {QStringLiteral("books-paying"), true,
         [](ui::MainWindow& window) -> QWidget* {
             turnTo<ui::OpenPage>(window).openPay();
             return &window;
         }},
    };
}

} // namespace rw::desktop
