// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desktop_options.h"

#include <QCommandLineParser>
#include <QCoreApplication>
#include <QDir>
#include <QStandardPaths>

#include <cstdio>

namespace rw::desktop {

namespace {
QString tr(const char* words) { return QCoreApplication::translate("DesktopOptions", words); }
} // namespace

std::optional<DesktopOptions> readOptions(const QStringList& arguments, int& exitCode) {
    const QStringList stations{QStringLiteral("counter"), QStringLiteral("bench"), QStringLiteral("stockroom"),
                               QStringLiteral("books")};
    QCommandLineParser parser;
    parser.setApplicationDescription(tr("The ledger of a racket-stringing shop."));
    const QCommandLineOption help({QStringLiteral("h"), QStringLiteral("help")}, tr("Says this and ends."));
    const QCommandLineOption version(QStringLiteral("version"), tr("Says the version and ends."));
    const QCommandLineOption ledger(QStringLiteral("ledger"),
                                    tr("The ledger to work on: a file, made when it is missing, or a postgresql:// "
                                       "address. Without it the shop's own ledger in your data folder."),
                                    QStringLiteral("L"));
    const QCommandLineOption demo(QStringLiteral("demo"), tr("Works on an invented shop, in a ledger of its own."));
    const QCommandLineOption pictures(QStringLiteral("pictures"),
                                      tr("Draws every window of an invented shop into a folder, without a screen."),
                                      QStringLiteral("DIR"));
    const QCommandLineOption station(QStringLiteral("station"),
                                     tr("Opens at this station: counter, bench, stockroom or books."),
                                     QStringLiteral("S"), stations.front());
    parser.addOptions({help, version, ledger, demo, pictures, station});

    exitCode = 2;
    const auto mistake = [](const QString& words) {
        std::fprintf(stderr, "reelwright: %s\n", qUtf8Printable(words));
        return std::nullopt;
    };
    if (!parser.parse(arguments)) {
        return mistake(parser.errorText());
    }
    if (parser.isSet(help)) {
        std::fputs(qUtf8Printable(parser.helpText()), stdout);
        exitCode = 0;
        return std::nullopt;
    }
    if (parser.isSet(version)) {
        std::puts("reelwright " REELWRIGHT_VERSION);
        exitCode = 0;
        return std::nullopt;
    }
    if (!parser.positionalArguments().isEmpty()) {
        return mistake(tr("What is “%1”? A ledger is named with --ledger.").arg(parser.positionalArguments().front()));
    }
    if (!stations.contains(parser.value(station))) {
        return mistake(tr("There is no station “%1”. The stations are counter, bench, stockroom and books.")
                           .arg(parser.value(station)));
    }
    if (parser.isSet(demo) && parser.isSet(ledger)) {
        return mistake(tr("--demo works on a ledger of its own; leave --ledger out."));
    }
    exitCode = 0;
    return DesktopOptions{parser.value(ledger), parser.isSet(demo), parser.value(pictures), parser.value(station)};
}

QString ownLedgerPath(const QString& name) {
    const QString folder =
        QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/reelwright");
    QDir().mkpath(folder);
    return folder + QLatin1Char('/') + name + QStringLiteral(".sqlite");
}

} // namespace rw::desktop
