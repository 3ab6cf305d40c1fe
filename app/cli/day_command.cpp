// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/day_story.h"
#include "app/cli/moment.h"
#include "app/cli/reports.h"
#include "app/files/ledger_guard.h"
#include "core/exchange/json_text.h"
#include "ui/documents/job_card.h"
#include "ui/documents/whole_file.h"
#include "ui/drawing/head_drawing.h"
#include "ui/text/format.h"

#include <QBuffer>
#include <QDateTime>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>

namespace rw::cli {

namespace {
/// The demo shop's own clock: open from Monday to Saturday.
const OpeningHours& demoHours() {
    static const OpeningHours kHours = [] {
        OpeningHours hours;
        hours.timeZone = "Europe/London";
        for (std::size_t day = 0; day < 6; ++day) {
            hours.week[day] = DayHours{std::chrono::hours(10), std::chrono::hours(18)};
        }
        return hours;
    }();
    return kHours;
}

/// Five past ten on today or the next day on which the shop is open.
Instant nextMorning(Instant now) {
    CivilDate date = localDate(demoHours(), now);
    while (!hoursOn(demoHours(), date)) {
        date = std::chrono::sys_days(date) + std::chrono::days(1);
    }
    return toInstant(demoHours(), date, std::chrono::hours(10) + std::chrono::minutes(5));
}

tl::unexpected<Refusal> unwritable(const QString& file, std::string reason) {
    return refuse(Code::FileUnwritable, {{"file", file.toStdString()}, {"reason", std::move(reason)}});
}

QByteArray headAsPng(const desk::JobCard& card) {
    const ui::Palette palette = ui::Palette::light();
    QImage image(1400, 1600, QImage::Format_ARGB32_Premultiplied);
    image.fill(palette.paper);
    {
        QPainter painter(&image);
        ui::drawHead(painter, image.rect(), card.plan, {ui::HeadDetail::Page, palette});
    }
    QBuffer png;
    png.open(QIODevice::WriteOnly);
    image.save(&png, "PNG");
    return png.data();
}

Result<QStringList> leavePapers(const desk::JobCard& card, const Reader& reader, const std::string& folder,
                                const std::string& ledger) {
    const QDir dir(ui::fromUtf8(folder));
    if (folder.empty() || !dir.mkpath(QStringLiteral("."))) {
        return unwritable(folder.empty() ? QStringLiteral("The folder") : dir.path(), "it cannot be made");
    }
    ui::JobCardStyle style;
    style.locale = reader.locale;
    style.zone = reader.zone;
    const QString pdf = dir.filePath(QStringLiteral("job-card.pdf"));
    const QString png = dir.filePath(QStringLiteral("head.png"));
    for (const QString& path : {pdf, png}) {
        if (const auto guarded = app::mustNotReplaceLedger(path.toStdString(), ledger); !guarded) {
            return tl::unexpected(guarded.error());
        }
    }
    if (const auto written = ui::writeJobCardPdf(pdf, card, style); !written) {
        return tl::unexpected(written.error());
    }
    if (const auto written = ui::writeWholeFile(png, headAsPng(card)); !written) {
        return tl::unexpected(written.error());
    }
    return QStringList{pdf, png};
}

std::string asText(const Day& day, const QStringList& papers, const Reader& reader) {
    QStringList lines;
    for (const Scene& scene : day.scenes) {
        if (!lines.isEmpty()) {
            lines << QString();
        }
        lines << QStringLiteral("%1  %2: %3")
                     .arg(ui::momentText(scene.at, reader.zone, reader.locale), scene.station, scene.did);
        for (const QString& seen : scene.sees) {
            lines << (seen.isEmpty() ? seen : QStringLiteral("    ") + seen);
        }
    }
    if (!papers.isEmpty()) {
        lines << QString();
    }
    for (const QString& paper : papers) {
        lines << QStringLiteral("left in %1").arg(paper);
    }
    return joined(lines);
}

std::string asJson(const Day& day, const QStringList& papers) {
    exchange::JsonText json;
    json.beginObject().key("scenes").beginList();
    for (const Scene& scene : day.scenes) {
        const QString at =
            QDateTime::fromMSecsSinceEpoch(scene.at.time_since_epoch().count(), Qt::UTC).toString(Qt::ISODate);
        json.beginObject()
            .key("at")
            .text(at.toStdString())
            .key("station")
            .text(scene.station.toLower().toStdString())
            .key("did")
            .text(scene.did.toStdString())
            .key("sees")
            .beginList();
        for (const QString& seen : scene.sees) {
            json.text(seen.toStdString());
        }
        json.endList().endObject();
    }
    json.endList().key("files").beginList();
    for (const QString& paper : papers) {
        json.text(paper.toStdString());
    }
    json.endList().endObject();
    return json.result();
}
} // namespace

Result<Answer> runDay(const Given& given) {
    Instant start = nextMorning(SystemClock().now());
    if (const auto told = given.maybe("--now")) {
        const auto read = parseMoment(*told, demoHours());
        if (!read) {
            return tl::unexpected(read.error());
        }
        start = *read;
    }
    const QTemporaryDir away;
    std::string address = away.filePath(QStringLiteral("day.ledger")).toStdString();
    if (const auto kept = given.maybe("--ledger")) {
        address = *kept;
    } else if (!away.isValid()) {
        return unwritable(QDir::tempPath(), away.errorString().toStdString());
    }
    auto shop = ShopLedger::open(address, sql::IfMissing::Create);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto day = playDay(*shop, start);
    if (!day) {
        return tl::unexpected(day.error());
    }
    const Reader reader = readerOf(*shop);
    QStringList papers;
    if (const auto folder = given.maybe("--out")) {
        const auto left = leavePapers(day->card, reader, *folder, address);
        if (!left) {
            return tl::unexpected(left.error());
        }
        papers = *left;
    }
    return Answer{given.has("--json") ? asJson(*day, papers) : asText(*day, papers, reader)};
}

} // namespace rw::cli
