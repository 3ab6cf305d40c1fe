// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/plan_words.h"

#include "ui/text/format.h"

#include <QCoreApplication>

#include <cmath>

namespace rw::ui {

namespace {
struct WhyWords {
    Q_DECLARE_TR_FUNCTIONS(WhyWords)
};

/// A part of a job inside a sentence, as one thing: "the string for the mains needs ...".
QString partWord(const QString& part) {
    if (part == QLatin1String("mains")) {
        return WhyWords::tr("string for the mains");
    }
    if (part == QLatin1String("crosses")) {
        return WhyWords::tr("string for the crosses");
    }
    return part == QLatin1String("whole") ? WhyWords::tr("whole piece") : WhyWords::tr("short side");
}

/// "1.2 % more", "0.4 % less"; of what goes without saying.
QString offByText(double percent, const QLocale& locale) {
    const QString number = locale.toString(std::abs(percent), 'f', 1);
    return percent < 0 ? WhyWords::tr("%1 % less").arg(number) : WhyWords::tr("%1 % more").arg(number);
}

QString setJudged(const QString& verdict, const QString& set, const QString& chance) {
    if (verdict == QLatin1String("enough")) {
        return WhyWords::tr("The set of %1 is enough; it falls short %2.").arg(set, chance);
    }
    return (verdict == QLatin1String("tight") ? WhyWords::tr("The set of %1 is tight: it falls short %2.")
                                              : WhyWords::tr("The set of %1 is not enough: it falls short %2."))
        .arg(set, chance);
}

QString setUsed(const QString& use, const QString& first, const QString& chance) {
    if (use == QLatin1String("halved")) {
        return WhyWords::tr("Halved, %1 each; the worse-off half comes short %2.").arg(first, chance);
    }
    return (use == QLatin1String("whole")
                ? WhyWords::tr("Used whole, %1 measured for the short side; the worse-off side comes short %2.")
                : WhyWords::tr("%1 measured for the mains, the rest for the crosses; the worse-off comes short %2."))
        .arg(first, chance);
}

QString ownJobs(const QString& part, long jobs, long measured) {
    if (jobs == 1) {
        return measured == 1 ? WhyWords::tr("The %1 from one job of the shop's own, with its tails measured.").arg(part)
                             : WhyWords::tr("The %1 from one job of the shop's own, its tails not measured.").arg(part);
    }
    const QString from = WhyWords::tr("The %1 from %2 jobs of the shop's own").arg(part, QString::number(jobs));
    if (measured == 0) {
        return WhyWords::tr("%1, no tails measured.").arg(from);
    }
    return measured == jobs ? WhyWords::tr("%1, all tails measured.").arg(from)
                            : WhyWords::tr("%1, tails measured in %2 of them.").arg(from, QString::number(measured));
}
} // namespace

QString whyText(const length::Why& why, const QLocale& locale) {
    using Kind = length::Why::Kind;
    const QString text = fromUtf8(why.text);
    const auto number = [&](double value, int decimals) { return locale.toString(value, 'f', decimals); };
    switch (why.kind) {
    case Kind::OutlineFrom:
        if (text == QLatin1String("measured")) {
            return WhyWords::tr("The head as measured with a tape.");
        }
        if (text == QLatin1String("measured and marked")) {
            return WhyWords::tr("The head as measured with a tape, its roundness from the size marked on the frame.");
        }
        if (text == QLatin1String("marked")) {
            return WhyWords::tr("The head from the size marked on the frame; nothing was measured.");
        }
        if (text == QLatin1String("length measured")) {
            return WhyWords::tr(
                "The head's length as measured with a tape; its width is the sport's usual one for it.");
        }
        if (text == QLatin1String("width measured")) {
            return WhyWords::tr(
                "The head's width as measured with a tape; its length is the sport's usual one for it.");
        }
        return WhyWords::tr("The sport's usual head; nothing is known of this one.");
    case Kind::MarkedDisagrees:
        return WhyWords::tr(
                   "The size marked on the frame, %1 cm², does not agree with the tape, %2 cm²; the tape is used.")
            .arg(number(why.value, 0), number(why.other, 0));
    case Kind::LargerThanRules:
        return WhyWords::tr("The %1 is larger than the rules allow (%2, at most %3): check the tape.")
            .arg(text, number(why.value, 0), number(why.other, 0));
    case Kind::RouteChosen:
        return WhyWords::tr("Strung by the route %1.").arg(text);
    case Kind::StartEndAssumed:
        return WhyWords::tr("Nobody has said where this frame's mains start; the %1 is taken, as this route needs it.")
            .arg(text);
    case Kind::TwoTopCrosses:
        return std::lround(why.value) == 1
                   ? WhyWords::tr("One top cross goes on the short side, so that no outer main is tied off there.")
                   : WhyWords::tr("%1 top crosses go on the short side: no outer main is tied off, both keep the same "
                                  "tension, and the end comes back to its own side.")
                         .arg(number(why.value, 0));
    case Kind::GeometryOnly:
        return text.isEmpty()
                   ? WhyWords::tr("From the head's measurements; never strung here.")
                   : WhyWords::tr("The %1 from the head's measurements: no cut of the shop's own tells of it.")
                         .arg(partWord(text));
    case Kind::OwnJobs:
        return ownJobs(partWord(text), std::lround(why.value), std::lround(why.other));
    case Kind::OwnNeeds:
        return std::abs(why.value - why.other) < 1
                   ? WhyWords::tr("The %1 needed %2 there.").arg(partWord(text), aboutLengthText(why.value, locale))
                   : WhyWords::tr("The %1 needed %2 to %3 there.")
                         .arg(partWord(text), aboutLengthText(why.value, locale), aboutLengthText(why.other, locale));
    case Kind::Corrected:
        return WhyWords::tr("By the head's measurements the %1 needs %2; with the shop's own cuts %3.")
            .arg(partWord(text), aboutLengthText(why.value, locale), aboutLengthText(why.other, locale));
    case Kind::ShopBias:
        return WhyWords::tr("Elsewhere in this shop the %1 needed %2 than predicted, by %3 measured cuts.")
            .arg(partWord(text), offByText(why.value, locale), number(why.other, 0));
    case Kind::FrameEffect:
        return WhyWords::tr("Compared with them the %1 needs %2 on this frame.")
            .arg(partWord(text), offByText(why.value, locale));
    case Kind::HeldAtPacket:
        return WhyWords::tr("Held at the usual packet of %1; the model's own cut would be %2.")
            .arg(aboutLengthText(why.value, locale), aboutLengthText(why.other, locale));
    case Kind::AbovePacket:
        return WhyWords::tr("The cut of %1 is more than the usual packet of %2: this pattern in this head needs it.")
            .arg(aboutLengthText(why.value, locale), aboutLengthText(why.other, locale));
    case Kind::LeastCost:
        return WhyWords::tr("The cut that costs least on average, spoiled jobs counted in: %1 a job.")
            .arg(number(why.value, 2));
    case Kind::CeilingDecides:
        return WhyWords::tr("The shortest cut whose chance of coming short is within the owner's ceiling, %1.")
            .arg(chanceText(why.value, locale));
    case Kind::SetJudged:
        return setJudged(text, aboutLengthText(why.value, locale), chanceText(why.other, locale));
    case Kind::SetUsed:
        return setUsed(text, aboutLengthText(why.value, locale), chanceText(why.other, locale));
    case Kind::SetSaferInOne:
        return WhyWords::tr("Safer in one piece, %1: it needs %2 and comes short %3.")
            .arg(text, aboutLengthText(why.value, locale), chanceText(why.other, locale));
    case Kind::SetSaferWithClamp:
        return WhyWords::tr("With a starting clamp and a bridge string for the last %1 it comes short %2.")
            .arg(aboutLengthText(why.value, locale), chanceText(why.other, locale));
    case Kind::SetEnoughFrom:
        return WhyWords::tr("A set would be enough from %1 on.").arg(aboutLengthText(why.value, locale));
    case Kind::CrossesFromThroat:
        return WhyWords::tr("Crosses from the throat up: make sure that this frame's maker allows it.");
    case Kind::LongOutsideRun:
        return WhyWords::tr("The run outside the hoop from %1 is %2, longer than usual (%3): look where it lies.")
            .arg(text, WhyWords::tr("%1 mm").arg(number(why.value, 0)),
                 WhyWords::tr("%1 mm").arg(number(why.other, 0)));
    }
    return {};
}

} // namespace rw::ui
