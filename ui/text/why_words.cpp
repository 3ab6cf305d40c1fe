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
        return WhyWords::tr("From the head's measurements; never strung here.");
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
