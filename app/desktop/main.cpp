// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desktop_options.h"
#include "app/desktop/pictures.h"
#include "app/files/csv_files.h"
#include "app/files/ledger_guard.h"
#include "core/desk/demo_shop.h"
#include "core/desk/shop_facts.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/ledger_address.h"
#include "ui/presenter/pause.h"
#include "ui/presenter/shift.h"
#include "ui/qtport/ledger_desk_runner.h"
#include "ui/qtport/qt_folder_chooser.h"
#include "ui/qtport/station_printer.h"
#include "ui/shell/main_window.h"
#include "ui/text/sentences.h"
#include "ui/widgets/application_look.h"
#include "ui/widgets/repeat_guard.h"

#include <QApplication>
#include <QMessageBox>
#include <QScreen>

#include <algorithm>
#include <cstdio>
#include <exception>
#include <string_view>

namespace rw::desktop {
namespace {

/// What a title bar and the edges of a window take, in points; desktops differ a little.
constexpr int kFrame = 40;

/// Somebody can see a window, as far as the environment tells.
bool hasScreen() {
    return !qEnvironmentVariableIsEmpty("DISPLAY") || !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") ||
           !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM");
}

/// A ledger that cannot be worked on: said on standard error, and in a dialog where somebody sees it.
int refuseToOpen(const QString& why) {
    std::fprintf(stderr, "reelwright: %s\n", qUtf8Printable(why));
    if (QGuiApplication::platformName() == QLatin1String("offscreen")) {
        return 2;
    }
    QMessageBox box(QMessageBox::Critical, QCoreApplication::translate("Desktop", "Reelwright"), why,
                    QMessageBox::Close);
    box.exec();
    return 2;
}

/// Opens the ledger once before the window, so that a refusal is said before anybody types: creates and migrates it,
/// and fills a new demo ledger. Nothing when all is well, else the sentence.
std::optional<QString> prepare(const sql::LedgerAddress& address, bool demo, Instant now) {
    try {
        auto ledger = sql::openLedger(address);
        if (!ledger) {
            return ui::sentenceFor(ledger.error());
        }
        if (!demo) {
            return std::nullopt;
        }
        const auto stocked =
            desk::inTransaction(**ledger, desk::Access::Write, [now](desk::Transaction& transaction) -> Result<void> {
                const auto facts = desk::shopFacts(transaction, now);
                if (!facts) {
                    return tl::unexpected<Refusal>(facts.error());
                }
                return facts->staff.empty() ? desk::stockDemoShop(transaction, now) : Result<void>();
            });
        return stocked ? std::nullopt : std::optional(ui::sentenceFor(stocked.error()));
    } catch (const WorldError&) {
        return ui::sentenceFor(std::current_exception());
    }
}

int openDesktop(const DesktopOptions& options) {
    const SystemClock clock;
    const QString where = options.demo               ? ownLedgerPath(QStringLiteral("demo"))
                          : options.ledger.isEmpty() ? ownLedgerPath(QStringLiteral("ledger"))
                                                     : options.ledger;
    const auto address = sql::LedgerAddress::parse(where.toStdString());
    if (!address) {
        return refuseToOpen(ui::sentenceFor(address.error()));
    }
    if (const auto why = prepare(*address, options.demo, clock.now())) {
        return refuseToOpen(*why);
    }
    ui::QtFolderChooser folders;
    const app::CsvFiles files([ledger = where.toStdString()](const QString& path) {
        return app::mustNotReplaceLedger(path.toStdString(), ledger);
    });
    ui::LedgerDeskRunner runner([address = *address]() -> std::unique_ptr<desk::Ledger> {
        auto ledger = sql::openLedger(address, sql::IfMissing::Refuse);
        if (!ledger) {
            throw LedgerLost(ui::sentenceFor(ledger.error()).toStdString());
        }
        return std::move(*ledger);
    });
    const ui::RepeatGuard oneEnter(*qApp);
    ui::Shift shift(clock);
    ui::StationPrinter printer;
    ui::MainWindow window(runner, shift, {folders, files, printer}, ui::kTypingPause);
    window.goTo(options.station);
    // On a small screen the foot of the window, with its keys, would be off the edge.
    if (const QSize room = window.screen()->availableSize();
        room.width() < window.width() + kFrame || room.height() < window.height() + kFrame) {
        window.showMaximized();
    } else {
        window.show();
    }
    return QApplication::exec();
}

} // namespace
} // namespace rw::desktop

int main(int argc, char** argv) {
    // Pictures are drawn without a screen, and so is help given; which platform Qt uses is decided before it starts.
    const bool seen = rw::desktop::hasScreen();
    const bool draws = std::any_of(argv + 1, argv + argc,
                                   [](const char* word) { return std::string_view(word).starts_with("--pictures"); });
    if (!seen || draws) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("reelwright"));
    QApplication::setApplicationVersion(QStringLiteral(REELWRIGHT_VERSION));
    int exitCode = 0;
    const auto options = rw::desktop::readOptions(QApplication::arguments(), exitCode);
    if (!options) {
        return exitCode;
    }
    rw::ui::lookLikeReelwright(application,
                               rw::ui::wantsDark(application) ? rw::ui::Palette::dark() : rw::ui::Palette::light());
    if (!options->pictures.isEmpty()) {
        return rw::desktop::drawPictures(options->pictures);
    }
    if (!seen) {
        return rw::desktop::refuseToOpen(QCoreApplication::translate(
            "Desktop", "There is no screen to open a window on. reelwright-cli does the same work without one."));
    }
    return rw::desktop::openDesktop(*options);
}
