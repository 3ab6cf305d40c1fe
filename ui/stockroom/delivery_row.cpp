// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/delivery_row.h"

#include "ui/model/shelf_model.h"
#include "ui/text/stockroom_words.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/count_edit.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/mass_edit.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/refused_line.h"

#include <QGridLayout>
#include <QSignalBlocker>

#include <algorithm>

namespace rw::ui {

DeliveryRow::DeliveryRow(int number, QGridLayout* grid, int gridRow, QWidget* parent)
    : QObject(parent)
    , m_string(new Choice(parent))
    , m_count(new CountEdit(desk::kMostAlike, parent))
    , m_kind(new Choice(parent))
    , m_length(new LengthEdit(parent))
    , m_price(new MoneyEdit(Currency::pounds(), parent))
    , m_batch(new QLineEdit(parent))
    , m_weight(new MassEdit(parent))
    , m_tag(new QLineEdit(parent))
    , m_note(new MarginNote(parent)) {
    const auto add = [&](int column, QWidget* editor, const QString& name) {
        editor->setAccessibleName(tr("Line %1: %2").arg(QString::number(number), name));
        grid->addWidget(editor, gridRow, column);
    };
    add(0, m_string, tr("string that came"));
    add(1, m_count, tr("how many"));
    add(2, m_kind, tr("reels or packets"));
    add(3, m_length, tr("length of each as printed"));
    add(4, m_price, tr("price of each"));
    add(5, m_batch, tr("batch"));
    add(6, m_weight, tr("weight of the new reel"));
    add(7, m_tag, tr("tag"));
    grid->addWidget(m_note, gridRow + 1, 0, 1, grid->columnCount());
    for (const LotKind kind : {LotKind::Reel, LotKind::Packet}) {
        m_kind->addItem(lotKindWord(kind), static_cast<int>(kind));
    }
    for (ValueEdit* edit : std::initializer_list<ValueEdit*>{m_count, m_length, m_price, m_weight}) {
        m_note->watch(edit);
        connect(edit, &ValueEdit::valueChanged, this, &DeliveryRow::changed);
        for (const auto when : {&ValueEdit::left, &ValueEdit::valueChanged}) {
            connect(edit, when, this, [this] { m_note->setVisible(!m_note->text().isEmpty()); });
        }
    }
    m_price->setMayBeBlank(true);
    m_weight->setMayBeBlank(true);
    connect(m_string, &QComboBox::currentIndexChanged, this, &DeliveryRow::stringChosen);
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        proposeLength();
        Q_EMIT changed();
    });
    connect(m_tag, &QLineEdit::textEdited, this, &DeliveryRow::changed);
}

void DeliveryRow::start(const std::vector<desk::ShelfString>& strings, const Currency& currency) {
    const QSignalBlocker quietString(m_string);
    const QSignalBlocker quietKind(m_kind);
    m_strings = strings;
    m_string->clear();
    m_string->addItem(QString(), qint64{0});
    for (const auto& string : strings) {
        m_string->addItem(articleTitle(string.article), qint64{string.article.id->value()});
    }
    m_string->setCurrentIndex(0);
    m_kind->setCurrentIndex(0);
    m_count->setValue(1);
    m_length->setValue(std::nullopt);
    m_proposedLength.clear();
    m_price->setCurrency(currency);
    m_price->setValue(std::nullopt);
    m_batch->clear();
    m_weight->setValue(std::nullopt);
    m_tag->clear();
    setTags({});
    clearProblem();
}

void DeliveryRow::setVisible(bool visible) {
    for (QWidget* editor : QList<QWidget*>{m_string, m_count, m_kind, m_length, m_price, m_batch, m_weight, m_tag}) {
        editor->setVisible(visible);
    }
    m_note->setVisible(visible && !m_note->text().isEmpty());
}

void DeliveryRow::choose(StringArticleId article) {
    m_string->setCurrentIndex(std::max(0, m_string->findData(qint64{article.value()})));
}

void DeliveryRow::setTags(const QString& proposed) { m_tag->setPlaceholderText(proposed); }

const desk::ShelfString* DeliveryRow::string() const {
    const qint64 id = m_string->currentData().toLongLong();
    const auto found = std::ranges::find_if(
        m_strings, [&](const desk::ShelfString& string) { return string.article.id->value() == id; });
    return found == m_strings.end() ? nullptr : &*found;
}

LotKind DeliveryRow::kind() const { return static_cast<LotKind>(m_kind->currentData().toInt()); }

void DeliveryRow::stringChosen() {
    // A string that is sold in packets and has no reel here comes in packets again.
    const auto* chosen = string();
    if (chosen != nullptr) {
        const bool reels =
            std::ranges::any_of(chosen->lots, [](const auto& there) { return there.lot.kind == LotKind::Reel; });
        const QSignalBlocker quiet(m_kind);
        const LotKind usual = chosen->article.packet && !reels ? LotKind::Packet : LotKind::Reel;
        m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(usual)));
    }
    proposeLength();
    Q_EMIT changed();
}

void DeliveryRow::proposeLength() {
    const auto* chosen = string();
    if (chosen == nullptr || (!m_length->isBlank() && m_length->text() != m_proposedLength)) {
        return;
    }
    std::optional<Length> usual;
    for (const auto& there : chosen->lots) {
        usual = there.lot.kind == kind() ? there.lot.nominal : usual;
    }
    if (kind() == LotKind::Packet && chosen->article.packet) {
        usual = chosen->article.packet;
    }
    m_length->setValue(usual);
    m_proposedLength = m_length->text();
}

bool DeliveryRow::isBlank() const { return m_string->currentIndex() <= 0; }

std::optional<desk::DeliveryLine> DeliveryRow::sketch() const {
    if (isBlank()) {
        return std::nullopt;
    }
    const auto price = m_price->readable();
    return desk::DeliveryLine{.article = StringArticleId::of(m_string->currentData().toLongLong()),
                              .count = m_count->readable().value_or(1),
                              .kind = kind(),
                              .nominal = m_length->readable().value_or(Length::fromMillimetres(0)),
                              .priceEach = price.value_or(Money::zero(m_price->currency())),
                              .batch = m_batch->text().trimmed().toStdString(),
                              .tag = m_tag->text().trimmed().toStdString(),
                              .newWeight = m_weight->readable()};
}

std::optional<desk::DeliveryLine> DeliveryRow::line() {
    clearProblem();
    for (ValueEdit* edit : std::initializer_list<ValueEdit*>{m_count, m_length, m_price, m_weight}) {
        if (edit->problem()) {
            m_note->sendBackTo(edit);
            m_note->show();
            return std::nullopt;
        }
    }
    return sketch();
}

void DeliveryRow::showRefusal(const Refusal& why) {
    showBeside(why,
               {{"count", m_count, m_note},
                {"length", m_length, m_note},
                {"price", m_price, m_note},
                {"batch", m_batch, m_note},
                {"weight", m_weight, m_note},
                {"tag", m_tag, m_note}},
               m_note);
    m_note->show();
}

void DeliveryRow::clearProblem() {
    m_note->clearAll();
    m_note->hide();
}

} // namespace rw::ui
