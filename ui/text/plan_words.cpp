// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/plan_words.h"

#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

#include <QCoreApplication>

#include <cmath>

namespace rw::ui {

namespace {
using length::Arm;
using length::LaidString;
using length::PiecePlan;
using length::StringId;

struct PlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)
};

/// Neighbouring strings of one kind that are laid one after the other.
struct Run {
    StringId::Kind kind;
    int first;
    int last;
};

std::vector<Run> runsOf(const Arm& arm) {
    std::vector<Run> runs;
    int step = 0;
    for (const LaidString& laid : arm.strings) {
        const StringId& id = laid.id;
        if (!runs.empty() && runs.back().kind == id.kind) {
            Run& run = runs.back();
            const int move = id.number - run.last;
            if ((move == 1 || move == -1) && (step == 0 || move == step)) {
                step = move;
                run.last = id.number;
                continue;
            }
        }
        runs.push_back({id.kind, id.number, id.number});
        step = 0;
    }
    return runs;
}

/// "mains 1–8", "main 8 right", "cross 1", "crosses 2–19". Mains name their side when it is not `side`.
QString runText(const Run& run, Side side, bool withKind) {
    const bool single = run.first == run.last;
    const QString numbers =
        single ? QString::number(run.first) : QString::number(run.first) + QChar(u'–') + QString::number(run.last);
    switch (run.kind) {
    case StringId::Kind::MainCentre:
        return PlanWords::tr("the centre main");
    case StringId::Kind::Cross:
        return !withKind ? numbers : (single ? PlanWords::tr("cross %1") : PlanWords::tr("crosses %1")).arg(numbers);
    case StringId::Kind::MainLeft:
    case StringId::Kind::MainRight:
        break;
    }
    const Side own = run.kind == StringId::Kind::MainLeft ? Side::Left : Side::Right;
    if (!withKind) {
        return numbers;
    }
    const QString mains = (single ? PlanWords::tr("main %1") : PlanWords::tr("mains %1")).arg(numbers);
    return own == side ? mains : PlanWords::tr("%1 %2").arg(mains, sideWord(own));
}

QString armText(const Arm& arm, bool withKind = true) {
    QStringList words;
    for (const Run& run : runsOf(arm)) {
        words << runText(run, arm.side, withKind);
    }
    return words.join(PlanWords::tr(", then "));
}

QString endText(const Arm& arm) {
    return PlanWords::tr("%1, %2").arg(hoopEndWord(arm.endsAtEnd), sideWord(arm.endsAtSide));
}

QStringList mainsLines(const PiecePlan& piece, HoopEnd start) {
    QStringList lines;
    if (piece.arms.size() == 2 && piece.arms[0].strings.size() == piece.arms[1].strings.size() &&
        piece.arms[0].endsAtEnd == piece.arms[1].endsAtEnd) {
        lines << PlanWords::tr("Mains: %1 on each side, from the %2; tied off at the %3.")
                     .arg(armText(piece.arms[0], false), hoopEndWord(start), hoopEndWord(piece.arms[0].endsAtEnd));
        return lines;
    }
    for (const Arm& arm : piece.arms) {
        lines << PlanWords::tr("Mains %1: %2, from the %3; tied off at the %4.")
                     .arg(sideWord(arm.side), armText(arm), hoopEndWord(start), endText(arm));
    }
    return lines;
}

QStringList crossesLines(const PiecePlan& piece) {
    QStringList lines;
    for (const Arm& arm : piece.arms) {
        lines << PlanWords::tr("Crosses: %1, begun %2; tied off at the %3.")
                     .arg(armText(arm, false), sideWord(arm.side), endText(arm));
    }
    return lines;
}

QStringList wholeLines(const PiecePlan& piece) {
    QStringList lines;
    for (std::size_t i = 0; i < piece.arms.size(); ++i) {
        const Arm& arm = piece.arms[i];
        const QString name = i == 0 ? PlanWords::tr("Short side, %1") : PlanWords::tr("Long side, %1");
        lines << PlanWords::tr("%1: %2; tied off at the %3.")
                     .arg(name.arg(sideWord(arm.side)), armText(arm), endText(arm));
    }
    return lines;
}

QString topCrossesText(int count) {
    switch (count) {
    case 0:
        return PlanWords::tr("no top cross");
    case 1:
        return PlanWords::tr("one top cross");
    case 2:
        return PlanWords::tr("two top crosses");
    default:
        return PlanWords::tr("%1 top crosses").arg(QString::number(count));
    }
}
} // namespace

QStringList routeLines(const length::CutPlan& plan) {
    QStringList lines;
    for (const PiecePlan& piece : plan.pieces) {
        switch (piece.role) {
        case PieceRole::Mains:
            lines << mainsLines(piece, plan.mainsStart);
            break;
        case PieceRole::Crosses:
            lines << crossesLines(piece);
            break;
        case PieceRole::Whole:
            lines << wholeLines(piece);
            break;
        }
    }
    return lines;
}

QString routeName(const length::CutPlan& plan) {
    if (plan.method == Method::TwoPiece) {
        return PlanWords::tr("two pieces");
    }
    const QString route = fromUtf8(plan.route);
    const QString onePiece = PlanWords::tr("one piece, %1");
    if (route.startsWith(QLatin1String("plain-"))) {
        const QString count = topCrossesText(route.mid(6, 1).toInt());
        return route.endsWith(QLatin1String("-reversed"))
                   ? onePiece.arg(PlanWords::tr("%1 on the short side, the second first").arg(count))
                   : onePiece.arg(PlanWords::tr("%1 on the short side").arg(count));
    }
    if (route.startsWith(QLatin1String("wrap-last"))) {
        return onePiece.arg(PlanWords::tr("an outer main laid last (%1)").arg(route));
    }
    if (route.startsWith(QLatin1String("wrap-first"))) {
        return onePiece.arg(PlanWords::tr("round by the bottom cross first (%1)").arg(route));
    }
    if (route.startsWith(QLatin1String("throat-up"))) {
        return onePiece.arg(PlanWords::tr("crosses from the throat up (%1)").arg(route));
    }
    return onePiece.arg(route);
}

QString shortSideWhere(const desk::ShortSideProposal& shortSide) {
    const QString mark = fromUtf8(shortSide.mountingMark);
    return mark.isEmpty() ? sideWord(shortSide.side) : PlanWords::tr("%1, %2").arg(sideWord(shortSide.side), mark);
}

QString shortSideHowLong(const desk::ShortSideProposal& shortSide, const QLocale& locale) {
    return PlanWords::tr("%1 = %2, %3")
        .arg(lengthText(shortSide.measure, locale), headLengthsText(shortSide.headLengths),
             topCrossesText(shortSide.topCrosses));
}

QString sideFromText(const desk::ShortSideProposal& shortSide) {
    const QString because = fromUtf8(shortSide.because);
    switch (shortSide.from) {
    case desk::SideFrom::Frame:
        return because.isEmpty() ? PlanWords::tr("the frame forces it")
                                 : PlanWords::tr("the frame forces it: %1").arg(because);
    case desk::SideFrom::Twin:
        return because.isEmpty() ? PlanWords::tr("matched with the twin")
                                 : PlanWords::tr("matched with %1").arg(because);
    case desk::SideFrom::Chosen:
        return PlanWords::tr("as chosen");
    case desk::SideFrom::LastTime:
        return PlanWords::tr("as last time");
    case desk::SideFrom::Usual:
        return PlanWords::tr("as usual here");
    }
    return {};
}

namespace {
QString fromHeadText(length::StandsOn head) {
    switch (head) {
    case length::StandsOn::Measured:
    case length::StandsOn::MeasuredAndMarked:
        break;
    case length::StandsOn::Marked:
        return PlanWords::tr("from the head's marked size");
    case length::StandsOn::LengthMeasured:
    case length::StandsOn::WidthMeasured:
        return PlanWords::tr("from one measurement of the head");
    case length::StandsOn::SportOnly:
        return PlanWords::tr("for a usual head of its sport, as nobody measured this one");
    }
    return PlanWords::tr("from the head's measurements");
}
} // namespace

QString cutFromText(desk::CutFrom from, length::StandsOn head) {
    switch (from) {
    case desk::CutFrom::LastTime:
        return PlanWords::tr("as last time");
    case desk::CutFrom::UsualCut:
        return PlanWords::tr("this shop's usual cut");
    case desk::CutFrom::OwnCuts:
        return PlanWords::tr("by this frame's own cuts");
    case desk::CutFrom::OtherFrames:
        return PlanWords::tr("%1 and other frames' tails").arg(fromHeadText(head));
    case desk::CutFrom::Geometry:
        return fromHeadText(head);
    case desk::CutFrom::Packet:
        return PlanWords::tr("the packet's");
    }
    return {};
}

QString aboveMarkedText(const desk::IntakePreview& preview, const TensionPair& asked, const QLocale& locale) {
    if (!preview.aboveMarked || !preview.highestMarked) {
        return {};
    }
    return PlanWords::tr("The highest pull is %1.")
        .arg(aboveText({highestPull(asked), *preview.highestMarked}, locale));
}

} // namespace rw::ui
