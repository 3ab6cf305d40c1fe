// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/scene_steps.h"
#include "app/desktop/station_scenes.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/shell/main_window.h"
#include "ui/stockroom/keep_strip.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/length_edit.h"

namespace rw::desktop {

namespace {
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
} // namespace

std::vector<Scene> stockroomScenes() {
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
             receiveDelivery(window);
             return &window;
         }},
        {QStringLiteral("stockroom-throwing-away"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->lookAhead(); // at a reel of it
             window.stockroom()->openTakeOff();
             return &window;
         }},
        {QStringLiteral("stockroom-gone"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->lookAhead(); // at a reel of it
             window.stockroom()->openClosed();
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
        {QStringLiteral("stockroom-correcting"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->lookAhead(); // at a reel of it
             window.stockroom()->openCorrect();
             return &window;
         }},
        {QStringLiteral("stockroom-new-string"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.goTo(QStringLiteral("stockroom"));
             window.stockroom()->openNewString();
             return &window;
         }},
    };
}

} // namespace rw::desktop
