// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/desk/lessons.h"
#include "core/exchange/json_text.h"
#include "ui/text/format.h"
#include "ui/text/lesson_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>

namespace rw::cli {

namespace {
struct Learn {
    Q_DECLARE_TR_FUNCTIONS(Learn)
};

void writePart(exchange::JsonText& json, const desk::PartLesson& part) {
    json.beginObject(exchange::JsonText::Shape::Line)
        .key("sport")
        .text(sportText(part.sport))
        .key("part")
        .text(part.shortSide ? kShortSideText : pieceRoleText(part.role))
        .key("n")
        .whole(part.cuts)
        .key("groups")
        .whole(part.groups)
        .key("bias")
        .number(part.bias.mean)
        .key("sd")
        .number(part.bias.sd)
        .endObject();
}

void writeFrame(exchange::JsonText& json, const desk::FrameLesson& lesson) {
    json.beginObject(exchange::JsonText::Shape::Line)
        .key("frame")
        .text(lesson.frame)
        .key("sport")
        .text(sportText(lesson.sport))
        .key("part")
        .text(lesson.group.shortSide ? kShortSideText : pieceRoleText(lesson.group.role))
        .key("material")
        .text(materialText(lesson.group.material))
        .key("route")
        .text(lesson.group.route)
        .key("n")
        .whole(lesson.cuts)
        .key("measured")
        .whole(lesson.measured)
        .key("cameShort")
        .whole(lesson.cameShort)
        .key("bias")
        .number(lesson.bias.mean)
        .key("effect")
        .number(lesson.effect)
        .key("sd")
        .number(lesson.sd)
        .endObject();
}

std::string asJson(const desk::Lessons& lessons) {
    exchange::JsonText json;
    json.beginObject().key("parts").beginList();
    for (const desk::PartLesson& part : lessons.parts) {
        writePart(json, part);
    }
    json.endList().key("frames").beginList();
    for (const desk::FrameLesson& lesson : lessons.frames) {
        writeFrame(json, lesson);
    }
    json.endList().endObject();
    return json.result();
}

QStringList partLines(const desk::Lessons& lessons, const QLocale& locale) {
    if (lessons.parts.empty()) {
        return {Learn::tr("No tails were told yet: how far the shop is off is not known. The line Tails at the finish "
                          "takes them.")};
    }
    using Align = TextTable::Align;
    TextTable table({Align::Left, Align::Left, Align::Right, Align::Left, Align::Left});
    for (const desk::PartLesson& part : lessons.parts) {
        table.add({ui::sportWord(part.sport), ui::partOfJobWord(part.role, part.shortSide),
                   ui::shareText(part.bias.mean, locale), ui::spreadText(part.bias.sd, locale),
                   ui::measuredCutsText(part.cuts, part.groups, locale)});
    }
    return QStringList{Learn::tr("The shop, against the head's measurements")} + table.lines(2);
}

QStringList frameLines(const desk::Lessons& lessons, const QLocale& locale) {
    if (lessons.frames.empty()) {
        return {Learn::tr("Nothing was cut off a lot and strung yet.")};
    }
    using Align = TextTable::Align;
    TextTable table({Align::Left, Align::Left, Align::Left, Align::Right, Align::Left, Align::Left});
    for (const desk::FrameLesson& lesson : lessons.frames) {
        table.add({printable(ui::fromUtf8(lesson.frame)),
                   ui::partOfJobWord(lesson.group.role, lesson.group.shortSide),
                   ui::materialWord(lesson.group.material), ui::shareText(lesson.effect, locale),
                   ui::spreadText(lesson.sd, locale), ui::lessonCutsText(lesson, locale)});
    }
    return QStringList{Learn::tr("Each frame, beside the shop")} + table.lines(2);
}
} // namespace

Result<Answer> runLearn(const Given& given) {
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto lessons = shop->read([](desk::Transaction& ledger) { return desk::lessons(ledger); });
    if (!lessons) {
        return tl::unexpected(lessons.error());
    }
    if (given.has("--json")) {
        return Answer{asJson(*lessons)};
    }
    const QLocale locale = readerOf(*shop).locale;
    return Answer{joined(partLines(*lessons, locale) + QStringList{QString()} + frameLines(*lessons, locale))};
}

} // namespace rw::cli
