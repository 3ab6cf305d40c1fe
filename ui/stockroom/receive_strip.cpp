// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/receive_strip.h"

#include "ui/model/shelf_model.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/refused_line.h"

#include <QUuid>
#include <QVBoxLayout>

namespace rw::ui {

ReceiveStrip::ReceiveStrip(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_string(new Choice(m_sheet))
    , m_kind(new Choice(m_sheet))
    , m_length(new LengthEdit(m_sheet))
    , m_tag(new QLineEdit(m_sheet))
    , m_price(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_shipping(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_batch(new QLineEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    m_string->setAccessibleName(tr("String that came"));
    m_kind->setAccessibleName(tr("Reel or packet"));
    for (const LotKind kind : {LotKind::Reel, LotKind::Packet}) {
        m_kind->addItem(lotKindWord(kind), static_cast<int>(kind));
    }
    m_length->setAccessibleName(tr("Length as printed"));
    m_tag->setAccessibleName(tr("Tag"));
    m_tag->setPlaceholderText(tr("tag: the next free one"));
    m_price->setAccessibleName(tr("Price of it"));
    m_shipping->setAccessibleName(tr("Its share of the shipping"));
    m_shipping->setMayBeBlank(true);
    m_stringLine = m_sheet->addLine(tr("Came in"), {m_string, m_kind});
    m_lengthLine = m_sheet->addLine(tr("Length"), {m_length, m_tag});
    m_priceLine = m_sheet->addLine(tr("Price"), {m_price, m_shipping});
    m_batchLine = m_sheet->addLine(tr("Batch"), m_batch);
    m_lengthLine.note->watch(m_length);
    m_priceLine.note->watch(m_price);
    m_priceLine.note->watch(m_shipping);
}

void ReceiveStrip::start(const std::vector<desk::ShelfString>& strings, const std::optional<StringArticleId>& chosen,
                         const Currency& currency) {
    m_string->clear();
    for (const auto& string : strings) {
        m_string->addItem(articleTitle(string.article), qint64{string.article.id->value()});
    }
    if (chosen) {
        m_string->setCurrentIndex(std::max(0, m_string->findData(qint64{chosen->value()})));
    }
    for (const auto& line : {m_stringLine, m_lengthLine, m_priceLine, m_batchLine}) {
        line.note->clearAll();
    }
    m_requestKey = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    m_price->setCurrency(currency);
    m_shipping->setCurrency(currency);
    m_length->setValue(std::nullopt);
    m_price->setValue(std::nullopt);
    m_shipping->setValue(std::nullopt);
    m_tag->clear();
    m_batch->clear();
    m_lengthLine.note->setNote(tr("as printed: 200 m, 660 ft"));
    m_priceLine.note->setNote(tr("what it cost, and its share of the shipping"));
    m_batchLine.note->setNote(tr("Enter puts it on the shelf, Esc goes back"));
    m_string->setFocus(Qt::OtherFocusReason);
}

std::optional<StockroomPresenter::Receipt> ReceiveStrip::receipt() {
    for (const auto& line : {m_stringLine, m_lengthLine, m_priceLine, m_batchLine}) {
        line.note->setProblem({});
    }
    if (m_string->currentIndex() < 0) {
        m_stringLine.note->setProblem(tr("no string yet: N adds one"));
        return std::nullopt;
    }
    if (m_length->problem()) {
        m_lengthLine.note->sendBackTo(m_length);
        return std::nullopt;
    }
    for (auto* edit : {m_price, m_shipping}) {
        if (edit->problem()) {
            m_priceLine.note->sendBackTo(edit);
            return std::nullopt;
        }
    }
    const Money price = *m_price->readable();
    return StockroomPresenter::Receipt{
        .article = StringArticleId::of(m_string->currentData().toLongLong()),
        .kind = static_cast<LotKind>(m_kind->currentData().toInt()),
        .tag = m_tag->text(),
        .nominal = *m_length->readable(),
        .price = price,
        .shipping = m_shipping->readable().value_or(Money::zero(price.currency())),
        .batch = m_batch->text(),
        .requestKey = m_requestKey,
    };
}

void ReceiveStrip::showRefusal(const Refusal& why) {
    showBeside(why,
               {{"length", m_length, m_lengthLine.note},
                {"tag", m_tag, m_lengthLine.note},
                {"price", m_price, m_priceLine.note},
                {"shipping", m_shipping, m_priceLine.note},
                {"batch", m_batch, m_batchLine.note}},
               m_batchLine.note);
}

} // namespace rw::ui
