// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/lesson_words.h"

#include "ui/text/format.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace rw::ui {

namespace {
struct LessonWords {
    Q_DECLARE_TR_FUNCTIONS(LessonWords)
};
} // namespace

QString partOfJobWord(PieceRole role, bool shortSide) {
    return shortSide ? LessonWords::tr("short side") : pieceWord(role);
}

QString shareText(double logarithm, const QLocale& locale) {
    const double percent = std::expm1(logarithm) * 100;
    const QString sign = percent < 0 ? QStringLiteral("−") : QStringLiteral("+");
    return LessonWords::tr("%1%2 %").arg(sign, locale.toString(std::abs(percent), 'f', 1));
}

QString spreadText(double sdOfLogarithm, const QLocale& locale) {
    return LessonWords::tr("± %1 %").arg(locale.toString(sdOfLogarithm * 100, 'f', 1));
}

QString measuredCutsText(int cuts, int groups, const QLocale& locale) {
    const QString of = groups == 1 ? LessonWords::tr("one frame and string")
                                   : LessonWords::tr("%1 frames and strings").arg(locale.toString(groups));
    return cuts == 1 ? LessonWords::tr("one measured cut of %1").arg(of)
                     : LessonWords::tr("%1 measured cuts of %2").arg(locale.toString(cuts), of);
}

QString lessonCutsText(const desk::FrameLesson& lesson, const QLocale& locale) {
    QStringList parts{lesson.cuts == 1 ? LessonWords::tr("one cut")
                                       : LessonWords::tr("%1 cuts").arg(locale.toString(lesson.cuts))};
    if (lesson.measured > 0) {
        parts << LessonWords::tr("%1 with tails").arg(locale.toString(lesson.measured));
    }
    if (lesson.cameShort > 0) {
        parts << LessonWords::tr("%1 came short").arg(locale.toString(lesson.cameShort));
    }
    return parts.join(QStringLiteral(", "));
}

QString needStoryTitle(const desk::NeedStory& story, std::size_t place, std::size_t of) {
    QStringList parts{partOfJobWord(story.group.role, story.group.shortSide)};
    if (!story.group.route.empty()) {
        parts << fromUtf8(story.group.route);
    }
    parts << materialWord(story.group.material);
    const QString title = parts.join(QStringLiteral(", "));
    return of == 1 ? title : LessonWords::tr("%1 (%2 of %3)").arg(title, QString::number(place), QString::number(of));
}

QString needStoryText(const desk::NeedStory& story, const QLocale& locale) {
    const desk::NeedStep& last = story.steps.back();
    const auto tails = std::ranges::count_if(
        story.steps, [](const desk::NeedStep& step) { return step.lowMm > 0 && std::isfinite(step.highMm); });
    const auto cuts = static_cast<qsizetype>(story.steps.size());
    const QString counted =
        cuts == 1 ? LessonWords::tr("one cut") : LessonWords::tr("%1 cuts").arg(locale.toString(cuts));
    const QString by =
        LessonWords::tr("%1, %2 with tails").arg(counted, locale.toString(static_cast<qlonglong>(tails)));
    const QString next =
        LessonWords::tr("The next needs about %1, give or take %2, by %3.")
            .arg(aboutLengthText(last.learnedMm, locale), aboutLengthText(last.learnedSdMm, locale), by);
    const QString alone =
        LessonWords::tr("By the head's measurements alone %1.").arg(aboutLengthText(story.predictedMm, locale));
    if (std::abs(story.biasMm - story.predictedMm) < 1) {
        return LessonWords::tr("%1 %2").arg(next, alone);
    }
    return LessonWords::tr("%1 %2 With what the rest of the shop's tails say %3.")
        .arg(next, alone, aboutLengthText(story.biasMm, locale));
}

QString toldText(const desk::NeedStep& step, const QLocale& locale) {
    if (std::isinf(step.highMm)) {
        return LessonWords::tr("came short");
    }
    if (step.lowMm <= 0) {
        return LessonWords::tr("was enough");
    }
    return step.highMm - step.lowMm < 1
               ? LessonWords::tr("needed %1").arg(aboutLengthText(step.lowMm, locale))
               : LessonWords::tr("needed %1 to %2")
                     .arg(aboutLengthText(step.lowMm, locale), aboutLengthText(step.highMm, locale));
}

QString needLegendText() {
    return LessonWords::tr("● by measured tails   ❘ by tails in words   ┬ was enough   ▲ came short; all as for the "
                           "newest job's tensions. The line is what was expected next, the band twice its spread; "
                           "dashed, the head's measurements alone.");
}

QString noCutsToldText() {
    return LessonWords::tr("No cut on this frame has come to its end yet: its lengths come from the head's "
                           "measurements. From the first job on this page shows what it needed.");
}

} // namespace rw::ui
