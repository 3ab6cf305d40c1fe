// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/order_words.h"

#include "ui/text/ahead_words.h"
#include "ui/text/format.h"
#include "ui/text/stock_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace rw::ui {

namespace {
struct OrderWords {
    Q_DECLARE_TR_FUNCTIONS(OrderWords)
};

QString stringName(const StringArticle& article) {
    QString name = fromUtf8(article.code) + QLatin1Char(' ') + fromUtf8(article.name);
    if (!article.colour.empty()) {
        name += QStringLiteral(", ") + fromUtf8(article.colour);
    }
    return name;
}

QString thingsText(LotKind kind, int count) {
    const QString number = QString::number(count);
    if (kind == LotKind::Packet) {
        return count == 1 ? OrderWords::tr("1 packet") : OrderWords::tr("%1 packets").arg(number);
    }
    return count == 1 ? OrderWords::tr("1 reel") : OrderWords::tr("%1 reels").arg(number);
}

/// "likely out 14 March", shorter than a board says it.
QString likelyText(const desk::StringAhead& ahead, const QLocale& locale) {
    const auto& likely = ahead.runOut.p50;
    return !ahead.isKnown() || !likely ? QString()
           : likely == ahead.today     ? OrderWords::tr("likely out today")
                                   : OrderWords::tr("likely out %1").arg(dayToComeText(*likely, ahead.today, locale));
}
} // namespace

QString orderCountText(const desk::OrderLine& line, const QLocale& locale) {
    const QString things = thingsText(line.kind, line.count);
    return line.each ? OrderWords::tr("%1 of %2").arg(things, heldText(*line.each, locale)) : things;
}

QString orderWhyText(const desk::OrderLine& line, const QLocale& locale) {
    using Because = stock::DraftLine::Because;
    const QString likely = likelyText(line.ahead, locale);
    switch (line.because) {
    case Because::RunningShort: {
        const QString left = line.ahead.jobsLeft == 0 ? OrderWords::tr("none left")
                                                      : OrderWords::tr("%1 left").arg(jobsText(line.ahead.jobsLeft));
        return likely.isEmpty() || line.ahead.jobsLeft == 0 ? left : OrderWords::tr("%1, %2").arg(left, likely);
    }
    case Because::DueSoon:
        return likely.isEmpty() ? OrderWords::tr("comes along: it is due within two weeks")
                                : OrderWords::tr("comes along: %1").arg(likely);
    case Because::FillsFreeShipping:
        return OrderWords::tr("comes early, for free shipping");
    }
    return {};
}

QString supplierText(const desk::OrderDraft& draft) {
    return draft.supplier.empty() ? OrderWords::tr("Nobody said who sends these") : fromUtf8(draft.supplier);
}

QString orderSumText(const desk::OrderDraft& draft, const QLocale& locale) {
    const auto goods = draft.goods();
    QString sum = !goods ? OrderWords::tr("nobody knows what it costs")
                  : draft.isPriced()
                      ? moneyText(*goods, locale)
                      : OrderWords::tr("%1 and what nobody knows the price of").arg(moneyText(*goods, locale));
    return draft.shipping && draft.shipping->minor() > 0
               ? OrderWords::tr("%1, and shipping, %2 the last time").arg(sum, moneyText(*draft.shipping, locale))
               : sum;
}

QString lastShippingText() { return OrderWords::tr("shipping, as the last time"); }

QString togetherText(const desk::OrderDraft& draft) {
    return !draft.goods()     ? OrderWords::tr("nobody knows what it costs")
           : draft.isPriced() ? OrderWords::tr("together")
                              : OrderWords::tr("together, where it is known");
}

QString orderLetterText(const std::vector<desk::OrderDraft>& drafts, const QLocale& locale) {
    QStringList paragraphs;
    for (const desk::OrderDraft& draft : drafts) {
        QStringList lines{supplierText(draft)};
        for (const desk::OrderLine& line : draft.lines) {
            lines << OrderWords::tr("%1: %2, %3")
                         .arg(orderCountText(line, locale), stringName(line.article), gaugeText(line.article, locale));
        }
        paragraphs << lines.join(QLatin1Char('\n'));
    }
    return paragraphs.isEmpty() ? QString() : paragraphs.join(QStringLiteral("\n\n")) + QLatin1Char('\n');
}

QString nothingToOrderText() {
    return OrderWords::tr("Nothing runs short, so there is nothing to order. Each string's forecast (F) says when that "
                          "will likely change.");
}

QString orderHintText() {
    return OrderWords::tr("A draft: nothing is ordered by itself. Ctrl+C copies it for a letter, Ctrl+E saves it for a "
                          "spreadsheet, Esc goes back.");
}

QString orderCopiedText() { return OrderWords::tr("The order is copied, without prices. Paste it into a letter."); }

QString orderSavedText(const QString& folder) { return OrderWords::tr("Saved as order.csv in %1.").arg(folder); }

} // namespace rw::ui
