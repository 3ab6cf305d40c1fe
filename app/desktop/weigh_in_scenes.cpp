// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/station_scenes.h"

#include "core/desk/stock_take.h"
#include "ui/shell/main_window.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/stockroom/weigh_in_page.h"
#include "ui/widgets/mass_edit.h"

#include <QLineEdit>

namespace rw::desktop {

namespace {
constexpr std::int64_t kNewestAtTheBench = 2122; // taken in the day before

struct OnScale {
    std::string_view tag;
    std::int64_t gross;
    std::int64_t empty; ///< 0: not weighed
    std::int64_t fresh;
};
/// The shelf of the invented shop: K-7 lacks a job, K-4 was never cut from, the rest is as booked.
constexpr OnScale kShelf[] = {
    {"K-2", 161, 150, 0}, {"K-4", 489, 0, 0}, {"L-3", 222, 149, 449}, {"T-1", 154, 119, 0}, {"K-7", 233, 150, 385}};

Mass grams(std::int64_t g) { return Mass::fromMilligrams(g * 1'000); }
std::optional<Mass> known(std::int64_t g) { return g == 0 ? std::nullopt : std::optional(grams(g)); }

By weigher(desk::Transaction& ledger) {
    const auto staff = ledger.shop().staff();
    const Instant logged = ledger.jobs().get(ledger.jobs().byNumber(kNewestAtTheBench).value())->logged;
    return {*staff[1].id, "stockroom", logged + std::chrono::hours(23)};
}

Result<void> weighTheShelf(desk::Transaction& ledger) {
    By by = weigher(ledger);
    const StockTakeId take = desk::goOnWithStockTake(ledger, by);
    for (const OnScale& lot : kShelf) {
        by.at += std::chrono::seconds(40);
        const auto in = desk::weigh(ledger, {.tag = std::string(lot.tag),
                                             .gross = grams(lot.gross),
                                             .empty = known(lot.empty),
                                             .fresh = known(lot.fresh),
                                             .stockTake = take,
                                             .by = by});
        if (!in) {
            return tl::unexpected(in.error());
        }
    }
    return {};
}

ui::WeighInPage* atTheScale(ui::MainWindow& window) {
    window.goTo(QStringLiteral("stockroom"));
    window.stockroom()->openWeighIn();
    return window.stockroom()->weighInPage();
}
} // namespace

std::vector<Scene> weighInScenes() {
    return {
        {QStringLiteral("weigh-in-first"), true,
         [](ui::MainWindow& window) {
             atTheScale(window);
             return static_cast<QWidget*>(&window);
         }},
        {QStringLiteral("weigh-in"), true,
         [](ui::MainWindow& window) {
             atTheScale(window);
             return static_cast<QWidget*>(&window);
         },
         weighTheShelf},
        {QStringLiteral("weigh-in-no-spool"), true,
         [](ui::MainWindow& window) {
             auto* page = atTheScale(window);
             page->tag()->setText(QStringLiteral("K-7"));
             page->gross()->setValue(grams(233));
             page->gross()->setFocus(Qt::OtherFocusReason);
             if (const auto onScale = page->enter()) {
                 window.stockroom()->weighing().weigh(*onScale);
             }
             return static_cast<QWidget*>(&window);
         }},
    };
}

} // namespace rw::desktop
