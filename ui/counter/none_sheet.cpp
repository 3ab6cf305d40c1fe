// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/none_sheet.h"

#include "ui/model/shelf_model.h"
#include "ui/presenter/asked_for_none_presenter.h"
#include "ui/text/counter_words.h"
#include "ui/text/sentences.h"
#include "ui/text/stock_words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"

#include <QKeyEvent>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

NoneSheet::NoneSheet(AskedForNonePresenter& asked, QWidget* parent)
    : QWidget(parent)
    , m_asked(asked)
    , m_sheet(new Sheet(this))
    , m_string(new Choice(m_sheet))
    , m_writeDown(new QPushButton(tr("Write it down"), m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    layout->addStretch();
    m_sheet->addHeading(tr("Asked for, had none"));
    m_line = m_sheet->addLine(tr("Which st&ring"), m_string);
    m_sheet->addLine(QString(), m_writeDown);
    m_writeDown->setDefault(true);
    connect(m_string, &QComboBox::currentIndexChanged, this, &NoneSheet::showLeft);
    connect(m_writeDown, &QPushButton::clicked, this, &NoneSheet::writeDown);
    connect(&m_asked, &AskedForNonePresenter::stringsChanged, this, &NoneSheet::fill);
    connect(&m_asked, &AskedForNonePresenter::wroteDown, this, &NoneSheet::left);
    connect(&m_asked, &AskedForNonePresenter::refused, this,
            [this](const Refusal& why) { m_line.note->setProblem(sentenceFor(why)); });
    fill();
}

void NoneSheet::enter(const std::optional<StringArticleId>& string) {
    m_asked.begin();
    m_asked.refresh();
    m_wanted = string;
    {
        const QSignalBlocker quiet(m_string);
        m_string->setCurrentIndex(0);
    }
    fill();
    takeKeyboard();
}

void NoneSheet::takeKeyboard() { m_string->setFocus(Qt::OtherFocusReason); }

std::optional<StringArticleId> NoneSheet::chosen() const {
    const qint64 id = m_string->currentData().toLongLong();
    return id == 0 ? std::nullopt : std::optional(StringArticleId::of(id));
}

void NoneSheet::fill() {
    const auto wanted = chosen() ? chosen() : m_wanted;
    {
        const QSignalBlocker quiet(m_string);
        m_string->clear();
        m_string->addItem(QString(), qint64{0});
        for (const desk::ShelfString& string : m_asked.strings()) {
            m_string->addItem(articleTitle(string.article), qint64{string.article.id->value()});
        }
        m_string->setCurrentIndex(std::max(0, wanted ? m_string->findData(qint64{wanted->value()}) : 0));
    }
    showLeft();
}

void NoneSheet::showLeft() {
    m_line.note->clearAll();
    const auto id = chosen();
    const auto string =
        std::ranges::find_if(m_asked.strings(), [&](const auto& each) { return each.article.id == id; });
    m_line.note->setNote(!id || string == m_asked.strings().end() ? askedForNoneHintText() : jobsFreeText(*string));
}

void NoneSheet::writeDown() {
    if (const auto id = chosen()) {
        m_asked.writeDown(*id);
    } else {
        m_line.note->setProblem(whichStringAskedText());
        takeKeyboard();
    }
}

void NoneSheet::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!event->isAutoRepeat()) {
            writeDown();
        }
        return;
    case Qt::Key_Escape:
        Q_EMIT left();
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
