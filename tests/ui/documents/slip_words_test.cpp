// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/slip_words.h"

#include "tests/ui/sample_cards.h"

#include <gtest/gtest.h>

#include <chrono>

namespace rw::ui {
namespace {

JobCardStyle english() {
    JobCardStyle style;
    style.locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
    return style;
}

Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

desk::JobPaper paperOf(desk::JobCard card, Money paid = pounds(0)) {
    card.job.charges = {
        {.kind = ChargeKind::Labour, .article = {}, .label = {}, .amount = pounds(1400)},
        {.kind = ChargeKind::FullBed, .article = {}, .label = {}, .amount = pounds(1600)},
        {.kind = ChargeKind::Extra, .article = {}, .label = "grommet tube", .count = 3, .amount = pounds(150)}};
    card.job.total = pounds(3150);
    return {std::move(card), "Harbour Lane Strings", paid};
}

std::string told(const TagWords& words) {
    return (QStringList{words.number, words.promise, words.customer, words.racket,
                        words.strings.join(QStringLiteral(" + ")), words.pulls})
        .join(QStringLiteral(" | "))
        .toStdString();
}

std::string told(const TicketWords& words) {
    QStringList lines{words.shop, words.number + QStringLiteral(", ") + words.taken,
                      words.customer + QStringLiteral(", ") + words.racket};
    lines << words.strings << words.pulls << words.note;
    for (const auto& [what, amount] : words.bill) {
        lines << what + QStringLiteral(": ") + amount;
    }
    lines << words.total << words.tax << words.paid << words.promise;
    return lines.join(QLatin1Char('\n')).toStdString();
}

TEST(TagWords, SayWhoseItIsAndWhatToDo) {
    EXPECT_EQ(told(tagWords(paperOf(samples::petra()), english())),
              "2121 | Thu 22 Jan 16:30 | Petra Lindobi | Aldermoor 98 A | Larkspun 130, natural | 52/50 lb");
    EXPECT_EQ(
        told(tagWords(paperOf(samples::tomas()), english())),
        "2122 | Thu 22 Jan 16:30 | Tomas Ferreday | Aldermoor 98 | mains Kestrelline 125, black + crosses Larkspun "
        "130, natural | 50/52 lb");
    desk::JobCard open = samples::petra();
    open.job.promised.reset();
    EXPECT_EQ(tagWords(paperOf(open), english()).promise.toStdString(), "");
}

TEST(TicketWords, SayWhatWasAgreed) {
    EXPECT_EQ(told(ticketWords(paperOf(samples::petra()), english())),
              "Harbour Lane Strings\n"
              "2121, taken in Thu 22 Jan 10:00\n"
              "Petra Lindobi, Aldermoor 98 A\n"
              "Larkspun 130, natural\n"
              "mains 52 lb, crosses 50 lb\n"
              "two pounds looser than last time: it felt a touch stiff\n"
              "labour: £14.00\n"
              "string, full bed: £16.00\n"
              "grommet tube × 3: £1.50\n"
              "£31.50\n"
              "\n"
              "\n"
              "Thu 22 Jan 16:30");
}

TEST(TicketWords, SayWhatIsPaid) {
    const auto paid = [](std::int64_t pence) {
        return ticketWords(paperOf(samples::petra(), pounds(pence)), english()).paid.toStdString();
    };
    EXPECT_EQ(paid(0), "");
    EXPECT_EQ(paid(1000), "£10.00 paid, £21.50 to pay");
    EXPECT_EQ(paid(3150), "paid");
    EXPECT_EQ(paid(3200), "£32.00 paid, £0.50 of it too much");
}

TEST(TicketWords, SayTheTaxOnce) {
    desk::JobPaper paper = paperOf(samples::petra());
    paper.card.job.charges = {
        {.kind = ChargeKind::Labour, .article = {}, .label = {}, .amount = pounds(2400), .taxHundredthsPercent = 2000}};
    paper.card.job.total = pounds(2400);
    // 24.00 with 20 % included has 4.00 of tax in it: 24 x 20 / 120.
    EXPECT_EQ(ticketWords(paper, english()).tax.toStdString(), "£4.00 tax in it");
    paper.card.job.charges.push_back(
        {.kind = ChargeKind::Tax, .article = {}, .label = {}, .amount = pounds(480), .taxHundredthsPercent = 2000});
    paper.card.job.total = pounds(2880);
    EXPECT_EQ(ticketWords(paper, english()).tax.toStdString(), "") << "added tax is a line of the bill";
}

desk::JobCard strung(desk::JobCard card) {
    card.job.strung = Strung{{Tension::tryParse("52 lb", TensionUnit::Pound).value(),
                              Tension::tryParse("22.5 kg", TensionUnit::Pound).value()},
                             MachineId::of(2),
                             {StaffId::of(2), "bench", *card.job.promised - std::chrono::minutes(80)}};
    return card;
}

TEST(LabelWords, SayWhatIsInTheFrameAsItWasStrung) {
    const LabelWords words = labelWords(paperOf(strung(samples::petra())), english());
    EXPECT_EQ(
        (QStringList{words.number, words.date, words.strings.join(QStringLiteral(" + ")), words.pulls, words.shop})
            .join(QStringLiteral(" | "))
            .toStdString(),
        "2121 | 22 January 2026 | Larkspun 130, natural | 52 lb / 22.5 kg | Harbour Lane Strings");
    EXPECT_EQ(labelWords(paperOf(strung(samples::tomas())), english()).strings.size(), 2);
}

TEST(ReadyWords, SayWhatToTakeAndWhatToGiveBack) {
    desk::JobCard card = strung(samples::petra());
    const auto told = [&](std::int64_t paid) {
        const ReadyWords words = readyWords(paperOf(card, pounds(paid)), english());
        return (QStringList{words.number, words.customer, words.racket, words.strung, words.gives, words.owed})
            .join(QLatin1Char('\n'))
            .toStdString();
    };
    EXPECT_EQ(told(1000), "2121\n"
                          "Petra Lindobi\n"
                          "Aldermoor 98 A\n"
                          "strung Thu 22 Jan 15:10: 52 lb / 22.5 kg, Larkspun 130, natural\n"
                          "\n"
                          "£21.50 to pay");
    card.inspection.cameWith = "a cover, one grip";
    EXPECT_NE(told(3150).find("give back: a cover, one grip\nnothing to pay"), std::string::npos) << told(3150);
    EXPECT_NE(told(3200).find("nothing to pay"), std::string::npos);
}

} // namespace
} // namespace rw::ui
