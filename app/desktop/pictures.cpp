// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pictures.h"

#include "app/desktop/picture_scenes.h"
#include "app/files/csv_files.h"
#include "core/desk/demo_shop.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/ledger_address.h"
#include "ui/presenter/shift.h"
#include "ui/qtport/direct_desk_runner.h"
#include "ui/qtport/qt_folder_chooser.h"
#include "ui/qtport/station_printer.h"
#include "ui/shell/main_window.h"
#include "ui/text/sentences.h"
#include "ui/widgets/application_look.h"

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>

#include <chrono>
#include <cstdio>

namespace rw::desktop {

namespace {
constexpr QSize kWindow(1280, 800);
/// The demo shop's day: Thursday 12 March 2026, eleven o'clock.
constexpr Instant kNow = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);

/// A look in which every scene is drawn.
struct Finish {
    QString suffix;
    double scale;
    bool dark;
};

int fail(const QString& words) {
    std::fprintf(stderr, "reelwright: %s\n", qUtf8Printable(words));
    return 2;
}

void demand(const Result<void>& done) {
    if (!done) {
        throw LedgerLost(ui::sentenceFor(done.error()).toStdString());
    }
}

std::unique_ptr<desk::Ledger> freshLedger(const QString& path, bool stocked) {
    auto ledger = sql::openLedger(*sql::LedgerAddress::parse(path.toStdString()));
    if (!ledger) {
        throw LedgerLost(ui::sentenceFor(ledger.error()).toStdString());
    }
    if (stocked) {
        const auto done = desk::inTransaction(**ledger, desk::Access::Write, [](desk::Transaction& transaction) {
            return desk::stockDemoShop(transaction, kNow);
        });
        demand(done);
    }
    return std::move(*ledger);
}

bool draw(QWidget& window, const Finish& finish, const QString& path) {
    QImage image(window.size() * finish.scale, QImage::Format_RGB32);
    image.setDevicePixelRatio(finish.scale);
    window.render(&image);
    return image.save(path);
}

} // namespace

int drawPictures(const QString& folder) {
    if (!QDir().mkpath(folder)) {
        return fail(QCoreApplication::translate("Pictures", "The folder “%1” cannot be made.").arg(folder));
    }
    try {
        const QTemporaryDir workshop;
        const FixedClock clock(kNow);
        ui::QtFolderChooser folders;
        const app::CsvFiles files;
        int number = 0;
        for (const Finish& finish : {Finish{QString(), 1, false}, Finish{QStringLiteral("@2x"), 2, false},
                                     Finish{QStringLiteral("-dark"), 1, true}}) {
            ui::lookLikeReelwright(*qApp, finish.dark ? ui::Palette::dark() : ui::Palette::light());
            for (const Scene& scene : scenes()) {
                const auto ledger =
                    freshLedger(workshop.filePath(QStringLiteral("%1.sqlite").arg(++number)), scene.stocked);
                if (scene.before) {
                    demand(desk::inTransaction(*ledger, desk::Access::Write, scene.before));
                }
                ui::DirectDeskRunner runner(*ledger);
                ui::Shift shift(clock);
                ui::StationPrinter printer(workshop.filePath(QStringLiteral("papers.ini")),
                                           QStringLiteral("Reelwright"));
                ui::MainWindow window(runner, shift, {folders, files, printer}, std::chrono::milliseconds(0));
                window.resize(kWindow);
                window.show();
                window.activateWindow();
                QApplication::processEvents();
                if (scene.stocked) {
                    shift.setStaff(*shift.shop().staff.front().id);
                }
                QWidget* shown = scene.play(window);
                QApplication::processEvents();
                shown->resize(kWindow);
                QApplication::processEvents();
                const QString path = folder + QLatin1Char('/') + scene.name + finish.suffix + QStringLiteral(".png");
                if (!draw(*shown, finish, path)) {
                    return fail(QCoreApplication::translate("Pictures", "“%1” cannot be written.").arg(path));
                }
                std::printf("%s\n", qUtf8Printable(path));
            }
        }
    } catch (const WorldError& error) {
        return fail(QString::fromUtf8(error.what()));
    }
    return 0;
}

} // namespace rw::desktop
