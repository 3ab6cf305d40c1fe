// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/keep_strip.h"

#include "ui/model/shelf_model.h"
#include "ui/presenter/request_key.h"
#include "ui/presenter/shift.h"
#include "ui/text/format.h"
#include "ui/text/stockroom_words.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/mass_edit.h"
#include "ui/widgets/refused_line.h"

#include <QVBoxLayout>

namespace rw::ui {

KeepStrip::KeepStrip(DeskRunner& runner, Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_shift(shift)
    , m_person(std::make_unique<PersonPresenter>(runner, shift))
    , m_sheet(new Sheet(this))
    , m_finder(new Finder(&m_people, m_sheet))
    , m_string(new Choice(m_sheet))
    , m_kind(new Choice(m_sheet))
    , m_length(new LengthEdit(m_sheet))
    , m_tag(new QLineEdit(m_sheet))
    , m_batch(new QLineEdit(m_sheet))
    , m_weight(new MassEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    m_finder->setNames(tr("Whose string it is"), tr("a piece of a name, or the last digits of a phone number"));
    m_string->setAccessibleName(tr("String that is kept"));
    m_kind->setAccessibleName(tr("Reel or packet"));
    for (const LotKind kind : {LotKind::Reel, LotKind::Packet}) {
        m_kind->addItem(lotKindWord(kind), static_cast<int>(kind));
    }
    m_length->setAccessibleName(tr("Length of it"));
    m_tag->setAccessibleName(tr("Tag"));
    m_tag->setPlaceholderText(tr("tag: the next free one"));
    m_batch->setAccessibleName(tr("Batch"));
    m_batch->setPlaceholderText(tr("batch"));
    m_weight->setAccessibleName(tr("Weight of it as it comes"));
    m_weight->setPlaceholderText(tr("weight, g"));
    m_weight->setMayBeBlank(true);
    m_personLine = m_sheet->addLine(tr("For"), m_finder);
    m_stringLine = m_sheet->addLine(tr("String"), {m_string, m_kind});
    m_lengthLine = m_sheet->addLine(tr("Length"), {m_length, m_tag, m_batch, m_weight});
    m_sheet->addStretch();
    m_lengthLine.note->watch(m_length);
    m_lengthLine.note->watch(m_weight);
    connectPeople();
}

KeepStrip::~KeepStrip() = default;

void KeepStrip::connectPeople() {
    connect(m_finder, &Finder::typed, this, [this](const QString& text) {
        m_person->setText(text);
        m_finder->setReady(m_person->text().isEmpty() || m_person->isSearched());
    });
    connect(m_finder, &Finder::hurried, m_person.get(), &PersonPresenter::hurry);
    connect(m_person.get(), &PersonPresenter::foundChanged, this, [this] {
        m_people.setFound(m_person->found(), {});
        m_finder->setReady(m_person->text().isEmpty() || m_person->isSearched());
    });
    connect(m_finder, &Finder::picked, this, [this](int row) {
        if (const auto& person = m_people.at(row).person) {
            m_person->pick(*person);
            m_string->setFocus(Qt::TabFocusReason);
        }
    });
    connect(m_person.get(), &PersonPresenter::pickedChanged, this, [this] {
        m_finder->setPicked(owner());
        m_personLine.note->setProblem({});
    });
}

QString KeepStrip::owner() const {
    return m_person->picked() ? fromUtf8(m_person->picked()->customer.name) : QString();
}

void KeepStrip::start(const std::vector<desk::ShelfString>& strings, const std::optional<StringArticleId>& chosen) {
    m_requestKey = newRequestKey();
    m_person->clear();
    m_string->clear();
    for (const auto& string : strings) {
        m_string->addItem(articleTitle(string.article), qint64{string.article.id->value()});
    }
    if (chosen) {
        m_string->setCurrentIndex(std::max(0, m_string->findData(qint64{chosen->value()})));
    }
    m_kind->setCurrentIndex(0);
    m_length->setValue(std::nullopt);
    m_tag->clear();
    m_batch->clear();
    m_weight->setValue(std::nullopt);
    for (const auto& line : {m_personLine, m_stringLine, m_lengthLine}) {
        line.note->clearAll();
    }
    m_personLine.note->setNote(tr("whose string it is; only their rackets are strung with it"));
    m_lengthLine.note->setNote(tr("what is on it. Enter keeps it here, Esc goes back"));
    m_finder->setFocus(Qt::OtherFocusReason);
}

std::optional<StockroomPresenter::Receipt> KeepStrip::receipt() {
    for (const auto& line : {m_personLine, m_stringLine, m_lengthLine}) {
        line.note->setProblem({});
    }
    if (!m_person->picked()) {
        m_personLine.note->setProblem(whoseStringText());
        m_finder->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    if (m_string->currentIndex() < 0) {
        m_stringLine.note->setProblem(noStringYetText());
        return std::nullopt;
    }
    if (m_length->problem()) {
        m_lengthLine.note->sendBackTo(m_length);
        return std::nullopt;
    }
    if (m_weight->problem()) {
        m_lengthLine.note->sendBackTo(m_weight);
        return std::nullopt;
    }
    const Money nothing = Money::zero(m_shift.shop().currency);
    return StockroomPresenter::Receipt{.article = StringArticleId::of(m_string->currentData().toLongLong()),
                                       .kind = static_cast<LotKind>(m_kind->currentData().toInt()),
                                       .tag = m_tag->text(),
                                       .nominal = *m_length->readable(),
                                       .price = nothing,
                                       .shipping = nothing,
                                       .batch = m_batch->text(),
                                       .requestKey = m_requestKey,
                                       .owner = m_person->picked()->customer.id,
                                       .newWeight = m_weight->readable()};
}

void KeepStrip::showRefusal(const Refusal& why) {
    showBeside(why,
               {{"length", m_length, m_lengthLine.note},
                {"tag", m_tag, m_lengthLine.note},
                {"batch", m_batch, m_lengthLine.note},
                {"weight", m_weight, m_lengthLine.note}},
               m_stringLine.note);
}

} // namespace rw::ui
