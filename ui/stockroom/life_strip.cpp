// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/life_strip.h"

#include "ui/model/shelf_model.h"
#include "ui/presenter/shift.h"
#include "ui/text/ahead_words.h"
#include "ui/text/format.h"
#include "ui/text/stockroom_words.h"
#include "ui/widgets/look.h"
#include "ui/widgets/row_delegate.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace rw::ui {

LifeStrip::LifeStrip(Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_shift(shift)
    , m_title(new QLabel(this))
    , m_words(new QLabel(this))
    , m_lines(new QListView(this))
    , m_ahead(new AheadView(this)) {
    m_title->setFont(largeFont(*this, 1.5));
    m_title->setWordWrap(true);
    m_words->setWordWrap(true);
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_words->setAccessibleName(tr("What is on this reel"));
    m_lines->setModel(&m_life);
    m_lines->setItemDelegate(new RowDelegate(m_lines));
    m_lines->setSelectionMode(QAbstractItemView::NoSelection);
    m_lines->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_lines->setAccessibleName(tr("The life of this reel"));
    auto* left = new QVBoxLayout;
    left->addWidget(m_title);
    left->addWidget(m_words, 1);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(20, 12, 12, 12);
    layout->setSpacing(20);
    layout->addLayout(left, 4);
    layout->addWidget(m_lines, 7);
    layout->addWidget(m_ahead, 7);
    m_ahead->hide();
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
}

void LifeStrip::show(const std::optional<desk::ShelfLot>& there, const std::optional<desk::LotLife>& life,
                     const QString& instead) {
    m_lines->setVisible(there.has_value());
    m_ahead->hide();
    if (!there) {
        m_title->clear();
        m_words->setText(instead);
        m_life.setRows({});
        return;
    }
    const QString name = life ? QStringLiteral(" · ") + articleTitle(life->article) : QString();
    m_title->setText(fromUtf8(there->lot.tag) + name);
    m_words->setText(lotThereText(*there));
    std::vector<LifeRow> rows;
    if (life) {
        for (std::size_t i = life->movements.size(); i-- > 0;) {
            const std::int64_t job = i < life->jobNumbers.size() ? life->jobNumbers[i] : 0;
            rows.push_back({life->movements[i], job, m_shift.staffName(life->movements[i].by.staff)});
        }
    }
    m_life.setZone(m_shift.zone());
    m_life.setRows(std::move(rows));
}

void LifeStrip::showAhead(const desk::ShelfString& string) {
    m_life.setRows({});
    m_title->setText(articleTitle(string.article));
    m_words->setText(aheadSentences(string).join(QLatin1Char('\n')));
    m_ahead->show(string);
    m_lines->hide();
    m_ahead->setVisible(m_ahead->drawsSomething());
}

} // namespace rw::ui
