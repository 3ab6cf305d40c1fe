// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/sentences.h"

#include "core/jobs/job_state.h"
#include "core/length/piece_role.h"
#include "core/units/length.h"
#include "ui/text/format.h"
#include "ui/text/setting_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace rw::ui {

namespace {
struct Sentences {
    Q_DECLARE_TR_FUNCTIONS(Sentences)
};

/// The arguments of a refusal as words. What a refusal forgot becomes a neutral word, never a gap.
class Facts {
public:
    Facts(const Refusal& refusal, const QLocale& locale)
        : m_refusal(refusal)
        , m_locale(locale) {}

    [[nodiscard]] bool has(const char* name) const { return !m_refusal.text(name).empty(); }
    [[nodiscard]] QString plain(const char* name, const QString& otherwise) const {
        return has(name) ? oneLine(fromUtf8(m_refusal.text(name)), 300) : otherwise;
    }
    [[nodiscard]] QString typed(const char* name) const { return quoted(fromUtf8(m_refusal.text(name))); }
    [[nodiscard]] QString length(const char* name) const {
        return lengthText(Length::fromMillimetres(m_refusal.number(name)), m_locale);
    }
    [[nodiscard]] std::int64_t number(const char* name) const { return m_refusal.number(name); }
    [[nodiscard]] QString lengthDifference(const char* more, const char* less) const {
        return lengthText(Length::fromMillimetres(number(more) - number(less)), m_locale);
    }
    [[nodiscard]] QString thing() const {
        const QString what = plain("what", Sentences::tr("value"));
        const QString setting = settingWord(m_refusal.text("what"));
        return what == QLatin1String("measured") ? Sentences::tr("measured length")
               : setting.isEmpty()               ? what
                                                 : setting;
    }
    [[nodiscard]] QString key() const {
        const QString setting = settingWord(m_refusal.text("key"));
        return setting.isEmpty() ? plain("key", thing()) : setting;
    }
    [[nodiscard]] QString lot() const {
        return has("lot") ? Sentences::tr("Lot %1").arg(typed("lot")) : Sentences::tr("This lot");
    }
    [[nodiscard]] QString job() const {
        return has("job") ? Sentences::tr("Job %1").arg(plain("job", {})) : Sentences::tr("This job");
    }
    [[nodiscard]] QString route() const {
        return has("route") ? Sentences::tr("The route %1").arg(typed("route")) : Sentences::tr("This route");
    }
    [[nodiscard]] QString ledger() const {
        return has("ledger") ? oneLine(fromUtf8(m_refusal.text("ledger")), 200) : Sentences::tr("The ledger");
    }
    /// "the mains were", "the string was": what a piece of one string is called alone.
    [[nodiscard]] QString pieceWas() const {
        return isWhole() ? Sentences::tr("the string was")
                         : Sentences::tr("the %1 were").arg(plain("piece", Sentences::tr("strings")));
    }
    [[nodiscard]] QString pieceIs() const {
        return isWhole() ? Sentences::tr("the string is")
                         : Sentences::tr("the %1 are").arg(plain("piece", Sentences::tr("strings")));
    }
    [[nodiscard]] QString pieceHas() const {
        return isWhole() ? Sentences::tr("the string has")
                         : Sentences::tr("the %1 have").arg(plain("piece", Sentences::tr("strings")));
    }
    /// One state or several with commas, in the trade's words: "logged or on the machine".
    [[nodiscard]] QString states(const char* name) const {
        QStringList words;
        for (const QString& state : fromUtf8(m_refusal.text(name)).split(QStringLiteral(", "), Qt::SkipEmptyParts)) {
            const auto known = jobStateFromText(state.toStdString());
            words << (known ? jobStateWord(*known) : oneLine(state, 40));
        }
        const QString last = words.isEmpty() ? QString() : words.takeLast();
        return words.isEmpty() ? last : Sentences::tr("%1 or %2").arg(words.join(QStringLiteral(", ")), last);
    }

private:
    [[nodiscard]] bool isWhole() const { return pieceRoleFromText(m_refusal.text("piece")) == PieceRole::Whole; }
    static QString oneLine(QString text, qsizetype most) {
        for (QChar& c : text) {
            if (c.category() == QChar::Other_Control) {
                c = QLatin1Char(' ');
            }
        }
        text = text.simplified();
        return text.size() <= most ? text : text.left(most - 1) + QChar(u'…');
    }
    const Refusal& m_refusal;
    const QLocale& m_locale;
};

/// ": 52, 52.5 lb or 23.5 kg would do" for the kinds of value that have a written form; else nothing.
QString example(const QString& thing) {
    if (thing == QLatin1String("tension")) {
        return Sentences::tr("; write it as 52, 52.5 lb or 23.5 kg");
    }
    if (thing == QLatin1String("length")) {
        return Sentences::tr("; write it as 11.2, 11.2 m or 1120 cm");
    }
    if (thing == QLatin1String("money")) {
        return Sentences::tr("; write it as 14 or 14.50");
    }
    if (thing == QLatin1String("weight")) {
        return Sentences::tr("; write it as 236 or 236.4 g");
    }
    if (thing == QLatin1String("time")) {
        return Sentences::tr("; write it as 17:00, fri 17:00 or 13 mar");
    }
    if (thing == QLatin1String("discount")) {
        return Sentences::tr("; write it as 10 % or 2.50");
    }
    if (thing == QLatin1String("pattern")) {
        return Sentences::tr("; write mains and crosses as 16 x 19");
    }
    if (thing == QLatin1String("day's hours")) {
        return Sentences::tr("; write them as 10-18 or 9:30-17:00");
    }
    if (thing == QLatin1String("date")) {
        return Sentences::tr("; write it as 2026-03-12");
    }
    if (thing == QLatin1String("days") || thing == QLatin1String("list of days")) {
        return Sentences::tr("; write days as 2026-12-25, or 2026-08-03 to 2026-08-14");
    }
    return {};
}

/// `thing` with its article: "a tension", "an amount".
QString aThing(const QString& thing) {
    if (thing == QLatin1String("money")) {
        return Sentences::tr("an amount of money");
    }
    const bool vowel = !thing.isEmpty() && QStringLiteral("aeio").contains(thing.at(0).toLower());
    return (vowel ? Sentences::tr("an %1") : Sentences::tr("a %1")).arg(thing);
}

QString outOfRange(const Facts& facts) {
    const QString thing = aThing(facts.thing());
    if (facts.has("lowest") && facts.has("highest")) {
        return Sentences::tr("%1 is no possible value for %2: it must be between %3 and %4.")
            .arg(facts.typed("text"), thing, facts.plain("lowest", {}), facts.plain("highest", {}));
    }
    return Sentences::tr("%1 is too small or too large for %2.").arg(facts.typed("text"), thing);
}

QString impossible(const Facts& facts) {
    const QString key = facts.key();
    if (key == QLatin1String("retired")) {
        return Sentences::tr("%1 cannot be retired: %2.")
            .arg(facts.typed("text"), facts.plain("expected", Sentences::tr("it is needed")));
    }
    if (key == QLatin1String("packet")) {
        return Sentences::tr("%1 is a full packet: packets are counted, not weighed.").arg(facts.typed("text"));
    }
    if (key == QLatin1String("hours")) {
        return Sentences::tr("These hours do not fit: they must be %1.")
            .arg(facts.plain("expected", Sentences::tr("others")));
    }
    if (key == QLatin1String("tails")) {
        return Sentences::tr("%1 cannot be read as tails: write %2.")
            .arg(facts.typed("text"), facts.plain("expected", Sentences::tr("centimetres")));
    }
    if (facts.plain("expected", {}) == QLatin1String("given once")) {
        return Sentences::tr("%1 is given twice; it is needed once.").arg(key);
    }
    if (facts.plain("text", {}) == QLatin1String("not empty")) {
        return Sentences::tr("The %1 is not empty; %2 is needed.")
            .arg(key, facts.plain("expected", Sentences::tr("an empty one")));
    }
    if (facts.has("text") && facts.has("expected")) {
        return Sentences::tr("%1 cannot be %2: it must be %3.")
            .arg(key, facts.typed("text"), facts.plain("expected", {}));
    }
    if (facts.has("expected")) {
        return Sentences::tr("%1 does not fit: it must be %2.").arg(key, facts.plain("expected", {}));
    }
    if (facts.has("text")) {
        return Sentences::tr("%1 cannot be %2.").arg(key, facts.typed("text"));
    }
    return Sentences::tr("%1 has an impossible value.").arg(key);
}

/// The reasons of core/length/route_choice.h; any other is said as it stands.
QString whyRouteDoesNotFit(const Facts& facts) {
    const QString reason = facts.plain("reason", Sentences::tr("this frame does not allow it"));
    if (reason.startsWith(QLatin1String("mains-finish-at-"))) {
        return Sentences::tr("%1 mains a side from the %2 finish at the %3")
            .arg(facts.plain("mainsASide", {}), facts.plain("mainsStart", {}), facts.plain("mainsFinish", {}));
    }
    if (reason == QLatin1String("odd-mains")) {
        return Sentences::tr("with a centre main the two sides finish at opposite ends");
    }
    if (reason == QLatin1String("pattern")) {
        return Sentences::tr("it cannot be laid over this pattern");
    }
    return reason;
}

QString routeDoesNotFit(const Facts& facts) {
    const QString reason = whyRouteDoesNotFit(facts);
    if (facts.has("fits")) {
        const QString fits = facts.plain("fits", {});
        const QString sentence = Sentences::tr("%1 does not fit: %2; what fits: %3.").arg(facts.route(), reason, fits);
        return fits.contains(QLatin1String("throat-up"))
                   ? Sentences::tr("%1 Crosses from the throat only where this frame's maker allows it.").arg(sentence)
                   : sentence;
    }
    return Sentences::tr("%1 does not fit: %2.").arg(facts.route(), reason);
}

/// The kinds are those of core/jobs/charge.h.
QString missingPrice(const Facts& facts) {
    const QString kind = facts.plain("kind", {});
    const bool ofBed = kind == QLatin1String("full-bed") || kind == QLatin1String("half-bed");
    const QString what = kind == QLatin1String("full-bed")            ? Sentences::tr("a full bed")
                         : kind == QLatin1String("half-bed")          ? Sentences::tr("half a bed")
                         : kind == QLatin1String("packet")            ? Sentences::tr("a packet")
                         : kind == QLatin1String("own-string-labour") ? Sentences::tr("labour on the customer's string")
                         : kind == QLatin1String("extra")             ? facts.typed("label")
                                                                      : kind;
    if (facts.has("sport")) {
        return Sentences::tr("The list has no price for %1, %2.").arg(what, facts.plain("sport", {}));
    }
    if (!facts.has("string")) {
        return Sentences::tr("Today's list has no price for %1.").arg(what);
    }
    const QString ofString = Sentences::tr("%1 of %2").arg(what, facts.typed("string"));
    return ofBed ? Sentences::tr("Today's list has no price for %1; E in the Stockroom sets it.").arg(ofString)
                 : Sentences::tr("Today's list has no price for %1.").arg(ofString);
}

QString wrongLot(const Facts& facts) {
    if (facts.has("string")) {
        return Sentences::tr("%1 cannot be used for %2: it holds another string or belongs to somebody else.")
            .arg(facts.lot(), facts.plain("string", {}));
    }
    return Sentences::tr("%1 holds another string or belongs to somebody else.").arg(facts.lot());
}

QString wrongState(const Facts& facts) {
    if (facts.has("state") && facts.has("wanted")) {
        return Sentences::tr("%1 is %2; for this it must be %3.")
            .arg(facts.job(), facts.states("state"), facts.states("wanted"));
    }
    return Sentences::tr("%1 is not at a step where this can be done.").arg(facts.job());
}

QString alreadyCut(const Facts& facts) {
    if (facts.has("lengthMm") && facts.has("lot")) {
        return Sentences::tr("%1: %2 cut before, %3 off %4; nothing was changed.")
            .arg(facts.job(), facts.pieceWas(), facts.length("lengthMm"), facts.typed("lot"));
    }
    return Sentences::tr("%1: %2 cut before; nothing was changed.").arg(facts.job(), facts.pieceWas());
}

QString racketStillHere(const Facts& facts) {
    QStringList things;
    if (facts.has("jobs")) {
        things += Sentences::tr("job %1").arg(facts.plain("jobs", {}));
    }
    if (facts.has("lots")) {
        things += Sentences::tr("string %1").arg(facts.plain("lots", {}));
    }
    return Sentences::tr("Something of theirs is still in the shop (%1): hand it over first.")
        .arg(things.join(QStringLiteral("; ")));
}

QString changedMeanwhile(const Facts& facts) {
    if (facts.has("job")) {
        return Sentences::tr("%1 was logged from this sheet before, with another wish, and was not changed. "
                             "Begin a new sheet (Ctrl+N), and withdraw the one that does not count.")
            .arg(facts.job());
    }
    if (facts.has("added")) {
        return Sentences::tr(
                   "This form added the %1 %2 before, with other words, and did not change it; look for it by "
                   "its name.")
            .arg(facts.thing(), facts.typed("added"));
    }
    if (facts.has("nod")) {
        return Sentences::tr("What is asked was changed meanwhile: it is %1 now instead of %2. Esc, then N nods to it.")
            .arg(facts.plain("theirs", {}), facts.plain("mine", {}));
    }
    if (facts.has("mine") && facts.has("theirs")) {
        return Sentences::tr("Somebody else changed the %1 meanwhile: it is %2 now, yours says %3; choose one.")
            .arg(facts.thing(), facts.typed("theirs"), facts.typed("mine"));
    }
    return Sentences::tr("Somebody else changed the %1 meanwhile; look at it again before changing it.")
        .arg(facts.thing());
}

QString withReason(const QString& sentence, const Facts& facts) {
    return facts.has("reason") ? Sentences::tr("%1: %2.").arg(sentence, facts.plain("reason", {}))
                               : Sentences::tr("%1.").arg(sentence);
}
} // namespace

QString quoted(const QString& typed) {
    constexpr qsizetype kMost = 60;
    QString text = typed;
    for (QChar& c : text) {
        // Marks that turn the direction of writing would turn the sentence around them too.
        if (c.category() == QChar::Other_Control || c.category() == QChar::Other_Format) {
            c = QLatin1Char(' ');
        }
    }
    text = text.simplified();
    if (text.size() > kMost) {
        qsizetype cut = kMost - 1;
        if (text.at(cut - 1).isHighSurrogate()) {
            --cut;
        }
        text = text.left(cut) + QChar(u'…');
    }
    return QChar(u'“') + text + QChar(u'”');
}

QString sentenceFor(const Refusal& refusal, const QLocale& locale) {
    const Facts facts(refusal, locale);
    switch (refusal.code()) {
    case Code::Unreadable:
        return Sentences::tr("%1 cannot be read as %2%3.")
            .arg(facts.typed("text"), aThing(facts.thing()), example(facts.thing()));
    case Code::OutOfRange:
        return outOfRange(facts);
    case Code::TooFine:
        return Sentences::tr("%1 has more decimals than are kept for %2.")
            .arg(facts.typed("text"), aThing(facts.thing()));
    case Code::NothingToChange:
        return Sentences::tr("%1 is a change, and there is no earlier %2 to change: write the whole value.")
            .arg(facts.typed("text"), facts.thing());
    case Code::Missing:
        if (facts.has("kind")) {
            return missingPrice(facts);
        }
        if (facts.thing() == QLatin1String("empty spool")) {
            return Sentences::tr("Neither the empty spool nor the reel when new was ever weighed: type what one of "
                                 "them weighs.");
        }
        return Sentences::tr("The %1 is missing.").arg(facts.thing());
    case Code::TooLong:
        if (facts.has("most")) {
            return Sentences::tr("The %1 is too long: %2 characters, and at most %3 are kept.")
                .arg(facts.thing(), facts.plain("length", Sentences::tr("many")), facts.plain("most", {}));
        }
        return Sentences::tr("The %1 is too long.").arg(facts.thing());
    case Code::UnknownKey:
        if (facts.has("known")) {
            return Sentences::tr("%1 is not known here; known: %2.").arg(facts.typed("key"), facts.plain("known", {}));
        }
        return Sentences::tr("%1 is not known here.").arg(facts.typed("key"));
    case Code::WrongType:
        return Sentences::tr("%1 must be %2.")
            .arg(facts.plain("key", facts.thing()), facts.plain("expected", Sentences::tr("another kind of value")));
    case Code::ImpossibleValue:
        return impossible(facts);
    case Code::RouteDoesNotFit:
        return routeDoesNotFit(facts);
    case Code::RouteUnknown:
        if (facts.has("known")) {
            return Sentences::tr("%1 is not known; known routes: %2.").arg(facts.route(), facts.plain("known", {}));
        }
        return Sentences::tr("%1 is not known.").arg(facts.route());
    case Code::StartEndUnknown:
        return Sentences::tr("%1 needs to know where the mains of this frame start, at the head or at the throat.")
            .arg(facts.route());
    case Code::NotEnoughString:
        return Sentences::tr("%1 has %2, and %3 are wanted: %4 too little.")
            .arg(facts.lot(), facts.length("lengthMm"), facts.length("wantedMm"),
                 facts.lengthDifference("wantedMm", "lengthMm"));
    case Code::NoLot:
        if (facts.has("string")) {
            return Sentences::tr("There is no reel with enough of %1; choose another string or receive one.")
                .arg(facts.plain("string", {}));
        }
        return Sentences::tr("No reel is chosen to cut from.");
    case Code::WrongLot:
        return wrongLot(facts);
    case Code::LotClosed:
        return Sentences::tr("%1 is closed; nothing can be cut from it.").arg(facts.lot());
    case Code::MeasureFirst:
        return Sentences::tr("%1 has %2 by the book and %3 are wanted: measure what is left and enter it.")
            .arg(facts.lot(), facts.length("lengthMm"), facts.length("wantedMm"));
    case Code::WrongState:
        return wrongState(facts);
    case Code::AlreadyCut:
        return alreadyCut(facts);
    case Code::NotCut:
        return Sentences::tr("%1: %2 not cut yet.").arg(facts.job(), facts.pieceIs());
    case Code::StaleAttempt:
        return Sentences::tr("%1: %2 moved on to another length since this card was opened; open it again.")
            .arg(facts.job(), facts.pieceHas());
    case Code::RacketStillHere:
        return racketStillHere(facts);
    case Code::ChangedMeanwhile:
        return changedMeanwhile(facts);
    case Code::NotFound:
        return facts.has("text") ? Sentences::tr("There is no %1 %2.").arg(facts.thing(), facts.typed("text"))
                                 : Sentences::tr("There is no such %1.").arg(facts.thing());
    case Code::CurrencyMismatch:
        return Sentences::tr("%1 and %2 are two currencies and cannot be put on one bill.")
            .arg(facts.plain("left", Sentences::tr("One amount")),
                 facts.plain("right", Sentences::tr("the other amount")));
    case Code::LedgerForeign:
        return withReason(Sentences::tr("%1 is not a ledger of this program and was not touched").arg(facts.ledger()),
                          facts);
    case Code::LedgerNewer:
        return Sentences::tr("%1 was written by a newer version: it has schema %2 and this program knows %3; "
                             "it was not touched.")
            .arg(facts.ledger(), facts.plain("found", Sentences::tr("a later one")),
                 facts.plain("known", Sentences::tr("an earlier one")));
    case Code::LedgerDamaged:
        return withReason(Sentences::tr("%1 is damaged and was not touched").arg(facts.ledger()), facts);
    case Code::LedgerUnreachable:
        return withReason(Sentences::tr("%1 cannot be opened").arg(facts.ledger()), facts);
    case Code::LedgerNotWritable:
        return withReason(Sentences::tr("%1 cannot be written to by this user").arg(facts.ledger()), facts);
    case Code::LedgerEncoding:
        return Sentences::tr("%1 keeps its text as %2, and a ledger needs UTF-8; it was not touched.")
            .arg(facts.ledger(), facts.plain("found", Sentences::tr("something else")));
    case Code::LedgerOnNetwork:
        return Sentences::tr("%1 is on a network share (%2), where a ledger file is not safe; "
                             "keep it on a local disk or use a PostgreSQL ledger.")
            .arg(facts.ledger(), facts.plain("filesystem", Sentences::tr("remote")));
    case Code::FileUnreadable:
        return withReason(Sentences::tr("%1 cannot be read").arg(facts.plain("file", Sentences::tr("The file"))),
                          facts);
    case Code::FileUnwritable:
        return withReason(Sentences::tr("%1 cannot be written").arg(facts.plain("file", Sentences::tr("The file"))),
                          facts);
    }
    return Sentences::tr("This cannot be done.");
}

} // namespace rw::ui
