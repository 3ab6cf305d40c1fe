// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/station_scenes.h"

#include "core/desk/asked_for_none.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/none_sheet.h"
#include "ui/shell/main_window.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/stockroom_station.h"

#include <string>

namespace rw::desktop {

namespace {
QWidget* toStockroom(ui::MainWindow& window, int down) {
    window.goTo(QStringLiteral("stockroom"));
    ui::ShelfView* shelf = window.stockroom()->shelf();
    shelf->setCurrentIndex(shelf->model()->index(down, 0));
    return &window;
}

/// A shop that sells more than it has: strings that nobody has received yet, wanted day after day.
Result<void> runShortOfALot(desk::Transaction& ledger) {
    const StringArticle like = ledger.strings().all().front();
    const Instant now = ledger.jobs().get(*ledger.jobs().byNumber(2120))->logged + std::chrono::hours(24);
    const StaffId staff = *ledger.shop().staff().front().id;
    for (const char* name :
         {"Alderline Soft 130", "Brackwater Control 118", "Corrie Power Rough 125", "Dunnock Multi 132"}) {
        StringArticle article = like;
        article.code = std::string(1, *name);
        article.name = name;
        const StringArticleId id = ledger.strings().add(article);
        for (int day = 1; day < 30; day += 3) {
            const auto asked = desk::askedForNone(
                ledger,
                {std::string(name) + std::to_string(day), id, {staff, "counter", now - std::chrono::days(day)}});
            if (!asked) {
                return tl::unexpected(asked.error());
            }
        }
    }
    return {};
}
} // namespace

std::vector<Scene> orderScenes() {
    return {
        {QStringLiteral("stockroom-forecast"), true, [](ui::MainWindow& window) { return toStockroom(window, 2); }},
        {QStringLiteral("stockroom-much-runs-short"), true,
         [](ui::MainWindow& window) { return toStockroom(window, 0); }, runShortOfALot},
        {QStringLiteral("stockroom-order"), true,
         [](ui::MainWindow& window) {
             QWidget* shown = toStockroom(window, 0);
             window.stockroom()->openOrder();
             return shown;
         }},
        {QStringLiteral("stockroom-order-much"), true,
         [](ui::MainWindow& window) {
             QWidget* shown = toStockroom(window, 0);
             window.stockroom()->openOrder();
             return shown;
         },
         runShortOfALot},
        {QStringLiteral("counter-asked-for-none"), true,
         [](ui::MainWindow& window) -> QWidget* {
             window.counter()->showAskedForNone();
             window.counter()->askedForNone()->string()->setCurrentIndex(2);
             return &window;
         }},
    };
}

} // namespace rw::desktop
