// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/weigh_in_page.h"

#include "ui/presenter/shift.h"
#include "ui/text/format.h"
#include "ui/text/weigh_words.h"
#include "ui/widgets/look.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/mass_edit.h"
#include "ui/widgets/refused_line.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPainter>
#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr int kColumnAir = 20;
constexpr int kStoryLines = 3;
} // namespace

WeighInPage::WeighInPage(Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_shift(shift)
    , m_title(new QLabel(tr("Weigh-in"), this))
    , m_progress(new QLabel(this))
    , m_tag(new QLineEdit(this))
    , m_gross(new MassEdit(this))
    , m_empty(new MassEdit(this))
    , m_fresh(new MassEdit(this))
    , m_note(new MarginNote(this))
    , m_lines(new QTableView(this))
    , m_story(new QLabel(this))
    , m_limits(new QLabel(weighLimitsText(), this)) {
    m_title->setFont(largeFont(*this, 1.5));
    for (QLabel* words : {m_progress, m_story, m_limits}) {
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText);
    }
    m_progress->setAccessibleName(tr("How far the stock-take is"));
    m_story->setAccessibleName(tr("What the weighing says"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 16, 24, 16);
    layout->setSpacing(8);
    layout->addWidget(m_title);
    layout->addWidget(m_progress);
    buildEntry();
    layout->addWidget(m_note);
    layout->addWidget(m_lines, 1);
    layout->addWidget(m_story);
    layout->addWidget(m_limits);
    buildLines();
}

void WeighInPage::buildEntry() {
    m_tag->setAccessibleName(tr("Tag of the reel on the scale"));
    m_gross->setAccessibleName(tr("What the scale shows"));
    m_empty->setAccessibleName(tr("Weight of the empty spool"));
    m_fresh->setAccessibleName(tr("Weight of the reel when new"));
    m_gross->setMayBeBlank(true); // between two reels it is
    for (MassEdit* once : {m_empty, m_fresh}) {
        once->setMayBeBlank(true);
        once->setPlaceholderText(tr("g, if not known yet"));
    }
    auto* entry = new QHBoxLayout;
    entry->setSpacing(10);
    const auto add = [&](const QString& label, QWidget* editor, int stretch) {
        auto* words = new QLabel(label, this);
        words->setBuddy(editor);
        entry->addWidget(words);
        entry->addWidget(editor, stretch);
    };
    add(tr("Tag"), m_tag, 2);
    add(tr("Scale"), m_gross, 2);
    add(tr("empty spool"), m_empty, 3);
    add(tr("when new"), m_fresh, 3);
    static_cast<QVBoxLayout*>(layout())->addLayout(entry);
    for (MassEdit* edit : {m_gross, m_empty, m_fresh}) {
        m_note->watch(edit);
    }
    connect(m_tag, &QLineEdit::textEdited, this, [this] { m_note->setProblem({}); });
}

void WeighInPage::buildLines() {
    m_lines->setModel(&m_model);
    m_lines->setAccessibleName(tr("What was weighed, the last first"));
    readByLines(*m_lines);
    m_lines->setFrameShape(QFrame::NoFrame);
    m_lines->horizontalHeader()->setStretchLastSection(true);
    m_lines->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_story->setMinimumHeight(kStoryLines * fontMetrics().lineSpacing());
    m_story->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    connect(m_lines->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        showStory();
        Q_EMIT lineChanged();
    });
}

void WeighInPage::start(const QString& tag) {
    m_tag->setText(tag);
    for (MassEdit* edit : {m_gross, m_empty, m_fresh}) {
        edit->setValue(std::nullopt);
    }
    m_note->setProblem({});
    (tag.isEmpty() ? static_cast<QWidget*>(m_tag) : m_gross)->setFocus(Qt::OtherFocusReason);
}

void WeighInPage::show(const desk::StockTakeSheet& sheet) {
    const desk::WeighIn* const before = current();
    const auto lot = m_last ? m_last : before != nullptr ? before->lot.id : std::nullopt;
    m_last.reset();
    m_model.setLines(sheet.lines);
    const int row = lot ? m_model.rowOf(*lot) : -1;
    m_lines->setCurrentIndex(m_model.index(std::max(row, 0), 0));
    m_lines->resizeColumnsToContents();
    for (int column = 0; column < WeighInModel::State; ++column) {
        m_lines->setColumnWidth(column, m_lines->columnWidth(column) + kColumnAir);
    }
    const QString when = sheet.take ? stockTakeWhenText(*sheet.take, fromUtf8(sheet.startedBy), fromUtf8(sheet.endedBy),
                                                        m_shift.zone()) +
                                          QLatin1Char(' ')
                                    : QString();
    m_progress->setText(when + stockTakeText(sheet));
    m_note->setNote(sheet.lines.empty() ? weighFirstText() : weighNextText());
    showStory();
}

std::optional<WeighInPresenter::OnScale> WeighInPage::enter() {
    m_note->setProblem({});
    if (m_lines->hasFocus() || (m_tag->text().trimmed().isEmpty() && m_gross->isBlank())) {
        m_tag->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    if (m_tag->hasFocus() && m_gross->isBlank()) {
        m_gross->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    for (MassEdit* edit : {m_gross, m_empty, m_fresh}) {
        if (edit->problem()) {
            m_note->sendBackTo(edit);
            return std::nullopt;
        }
    }
    if (m_gross->isBlank()) {
        showRefusal(Refusal(Code::Missing, {{"what", "weight"}}));
        return std::nullopt;
    }
    return WeighInPresenter::OnScale{.tag = m_tag->text(),
                                     .gross = *m_gross->readable(),
                                     .empty = m_empty->readable(),
                                     .fresh = m_fresh->readable()};
}

void WeighInPage::showWeighed(const desk::WeighIn& in) {
    m_last = in.lot.id;
    start({});
}

void WeighInPage::showRefusal(const Refusal& why) {
    showBeside(why,
               {{"tag", m_tag, m_note},
                {"lot", m_tag, m_note},
                {"packet", m_tag, m_note},
                {"weight", m_gross, m_note},
                {"weight when new", m_fresh, m_note},
                {"empty spool", m_empty, m_note}},
               m_note);
}

const desk::WeighIn* WeighInPage::current() const {
    const QModelIndex index = m_lines->currentIndex();
    return index.isValid() ? &m_model.at(index.row()) : nullptr;
}

void WeighInPage::showStory() {
    const auto* line = current();
    m_story->setText(line != nullptr ? weighStoryText(*line) : QString());
}

void WeighInPage::paintEvent(QPaintEvent*) {
    const Palette palette = programPalette();
    QPainter painter(this);
    painter.fillRect(rect(), palette.paper);
    painter.setPen(palette.rule);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace rw::ui
