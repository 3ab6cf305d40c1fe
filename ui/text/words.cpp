// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/words.h"

#include "ui/text/format.h"

#include <QCoreApplication>

#include <cassert>

namespace rw::ui {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

// Every switch below names every value, so that the compiler asks for the word of a new one.
QString unknown() {
    assert(false && "a value outside its enumeration");
    return {};
}
} // namespace

QString sportWord(Sport sport) {
    switch (sport) {
    case Sport::Tennis:
        return Words::tr("tennis");
    case Sport::Squash:
        return Words::tr("squash");
    case Sport::Badminton:
        return Words::tr("badminton");
    }
    return unknown();
}

QString sideWord(Side side) { return side == Side::Left ? Words::tr("left") : Words::tr("right"); }

QString hoopEndWord(HoopEnd end) { return end == HoopEnd::Head ? Words::tr("head") : Words::tr("throat"); }

QString materialWord(Material material) {
    switch (material) {
    case Material::NaturalGut:
        return Words::tr("natural gut");
    case Material::Nylon:
        return Words::tr("nylon");
    case Material::Multifilament:
        return Words::tr("multifilament");
    case Material::Polyester:
        return Words::tr("polyester");
    case Material::Aramid:
        return Words::tr("aramid");
    }
    return unknown();
}

QString pieceWord(PieceRole role) {
    switch (role) {
    case PieceRole::Mains:
        return Words::tr("mains");
    case PieceRole::Crosses:
        return Words::tr("crosses");
    case PieceRole::Whole:
        return Words::tr("one piece");
    }
    return unknown();
}

QString methodWord(Method method) {
    return method == Method::TwoPiece ? Words::tr("two pieces") : Words::tr("one piece");
}

QString jobStateWord(JobState state) {
    switch (state) {
    case JobState::Logged:
        return Words::tr("logged");
    case JobState::OnTheMachine:
        return Words::tr("on the machine");
    case JobState::Strung:
        return Words::tr("strung");
    case JobState::Collected:
        return Words::tr("collected");
    case JobState::Waiting:
        return Words::tr("waiting");
    case JobState::Withdrawn:
        return Words::tr("withdrawn");
    }
    return unknown();
}

QString jobEventWord(JobEventKind kind) {
    switch (kind) {
    case JobEventKind::Logged:
        return Words::tr("logged");
    case JobEventKind::Taken:
        return Words::tr("taken to the machine");
    case JobEventKind::PutDown:
        return Words::tr("put down");
    case JobEventKind::Cut:
        return Words::tr("cut");
    case JobEventKind::Lost:
        return Words::tr("length lost");
    case JobEventKind::Strung:
        return Words::tr("strung");
    case JobEventKind::Reopened:
        return Words::tr("opened again");
    case JobEventKind::Collected:
        return Words::tr("collected");
    case JobEventKind::BroughtBack:
        return Words::tr("brought back");
    case JobEventKind::Waiting:
        return Words::tr("waiting");
    case JobEventKind::Resumed:
        return Words::tr("going on");
    case JobEventKind::Withdrawn:
        return Words::tr("withdrawn");
    }
    return unknown();
}

QString lotKindWord(LotKind kind) {
    switch (kind) {
    case LotKind::Reel:
        return Words::tr("reel");
    case LotKind::Packet:
        return Words::tr("packet");
    case LotKind::Remnant:
        return Words::tr("remnant");
    }
    return unknown();
}

QString sourceWord(PieceSource source) {
    switch (source) {
    case PieceSource::ShopLot:
        return Words::tr("off the shop's reel");
    case PieceSource::CustomersLot:
        return Words::tr("off the customer's own reel");
    case PieceSource::CustomersSet:
        return Words::tr("from the customer's own set");
    }
    return unknown();
}

QString movementWord(MovementReason reason) {
    switch (reason) {
    case MovementReason::Received:
        return Words::tr("received");
    case MovementReason::Cut:
        return Words::tr("cut");
    case MovementReason::Lost:
        return Words::tr("lost");
    case MovementReason::Measured:
        return Words::tr("measured");
    case MovementReason::Weighed:
        return Words::tr("weighed");
    case MovementReason::Returned:
        return Words::tr("given back");
    case MovementReason::ThrownAway:
        return Words::tr("thrown away");
    }
    return unknown();
}

QString lostReasonWord(LostReason reason) {
    switch (reason) {
    case LostReason::CameShort:
        return Words::tr("came short");
    case LostReason::Kinked:
        return Words::tr("kinked");
    case LostReason::Nicked:
        return Words::tr("nicked");
    case LostReason::Snapped:
        return Words::tr("snapped");
    case LostReason::MisWoven:
        return Words::tr("mis-woven");
    case LostReason::WrongString:
        return Words::tr("wrong string");
    case LostReason::FaultyReel:
        return Words::tr("faulty reel");
    case LostReason::Other:
        return Words::tr("other");
    }
    return unknown();
}

QString chargeWord(const Charge& charge) {
    const QString label = fromUtf8(charge.label);
    const auto named = [&](const QString& kind) {
        return label.isEmpty() ? kind : Words::tr("%1: %2").arg(kind, label);
    };
    switch (charge.kind) {
    case ChargeKind::Labour:
        return named(Words::tr("labour"));
    case ChargeKind::OwnStringLabour:
        return named(Words::tr("labour, own string"));
    case ChargeKind::FullBed:
        return named(Words::tr("string, full bed"));
    case ChargeKind::HalfBed:
        return named(Words::tr("string, half bed"));
    case ChargeKind::Packet:
        return named(Words::tr("string, packet"));
    case ChargeKind::Extra:
        return charge.count == 1 ? (label.isEmpty() ? Words::tr("extra") : label)
                                 : Words::tr("%1 × %2").arg(label.isEmpty() ? Words::tr("extra") : label,
                                                            QString::number(charge.count));
    case ChargeKind::Rush:
        return named(Words::tr("rush"));
    case ChargeKind::Discount:
        return named(Words::tr("discount"));
    case ChargeKind::Tax:
        return named(Words::tr("tax"));
    }
    return unknown();
}

QString racketName(const std::string& frame, const std::string& mark) {
    return mark.empty() ? fromUtf8(frame) : fromUtf8(frame) + QLatin1Char(' ') + fromUtf8(mark);
}

QString stringName(const StringArticle& article) {
    const QString name = fromUtf8(article.name);
    return article.colour.empty() ? name : Words::tr("%1, %2").arg(name, fromUtf8(article.colour));
}

QString patternText(const Pattern& pattern) {
    const QString counts = Words::tr("%1 × %2").arg(QString::number(pattern.mains), QString::number(pattern.crosses));
    if (!pattern.mainsStart) {
        return counts;
    }
    return Words::tr("%1, mains start at the %2").arg(counts, hoopEndWord(*pattern.mainsStart));
}

} // namespace rw::ui
