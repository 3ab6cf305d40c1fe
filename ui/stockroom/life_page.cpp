// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/life_page.h"

#include "ui/model/shelf_model.h"
#include "ui/presenter/shift.h"
#include "ui/text/format.h"
#include "ui/text/stockroom_words.h"
#include "ui/widgets/look.h"

#include <QHeaderView>
#include <QPainter>
#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr int kCurveHeight = 190;

LotCurve curveOf(const desk::LotLife& life, const QTimeZone& zone) {
    LotCurve curve{.steps = {},
                   .nominal = life.lot.nominal,
                   .top = heldText(life.lot.nominal),
                   .bottom = heldText(Length::fromMillimetres(0)),
                   .from = {},
                   .to = {}};
    Length left = Length::fromMillimetres(0);
    for (const Movement& movement : life.movements) {
        left += movement.change;
        const bool measured =
            (movement.reason == MovementReason::Measured || movement.reason == MovementReason::Weighed) &&
            !movement.corrects;
        curve.steps.push_back({movement.by.at, left, measured});
    }
    if (!curve.steps.empty()) {
        curve.from = dateText(curve.steps.front().at, zone);
        curve.to = dateText(curve.steps.back().at, zone);
        if (curve.to == curve.from) {
            curve.to.clear();
        }
    }
    return curve;
}
} // namespace

LotCurveView::LotCurveView(QWidget* parent)
    : QWidget(parent) {
    setFixedHeight(kCurveHeight);
    setAccessibleName(tr("Its length over time, drawn; the table says the same in numbers"));
}

void LotCurveView::show(LotCurve curve) {
    m_curve = std::move(curve);
    update();
}

void LotCurveView::paintEvent(QPaintEvent*) {
    if (m_curve) {
        QPainter painter(this);
        m_curve->textHeight = QFontMetricsF(font()).ascent();
        drawLotCurve(painter, QRectF(rect()).adjusted(2, 4, -2, -2), *m_curve, programPalette());
    }
}

LifePage::LifePage(Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_shift(shift)
    , m_title(new QLabel(this))
    , m_facts(new QLabel(this))
    , m_sum(new QLabel(this))
    , m_curve(new LotCurveView(this))
    , m_lines(new QTableView(this)) {
    m_title->setFont(largeFont(*this, 1.5));
    for (auto* words : {m_title, m_facts, m_sum}) {
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText);
    }
    QFont bold = m_sum->font();
    bold.setBold(true);
    m_sum->setFont(bold);
    m_lines->setModel(&m_story);
    m_lines->setAccessibleName(tr("Everything that happened to it, oldest first"));
    readByLines(*m_lines);
    m_lines->setFrameShape(QFrame::NoFrame);
    m_lines->horizontalHeader()->setStretchLastSection(true);
    m_lines->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 16, 24, 16);
    layout->setSpacing(8);
    layout->addWidget(m_title);
    layout->addWidget(m_facts);
    layout->addWidget(m_sum);
    layout->addWidget(m_curve);
    layout->addWidget(m_lines, 1);
}

void LifePage::show(const std::optional<desk::LotLife>& life) {
    m_life = life;
    const int row = m_lines->currentIndex().row(); // read again, it stays where somebody looks
    m_story.setLife(life, m_shift.zone(), [this](StaffId staff) { return m_shift.staffName(staff); });
    m_statement = life ? lotStatementText(*life, m_shift.zone()) : QString();
    if (life) {
        m_title->setText(fromUtf8(life->lot.tag) + QStringLiteral(" · ") + articleTitle(life->article));
        m_facts->setText(lotFactsText(*life, m_shift.zone(), m_showsPaid ? Paid::Shown : Paid::Hidden));
        m_sum->setText(lotSumText(*life));
        m_curve->show(curveOf(*life, m_shift.zone()));
    }
    m_lines->resizeColumnsToContents();
    for (int column = 0; column < LotStoryModel::Why; ++column) {
        m_lines->setColumnWidth(column, m_lines->columnWidth(column) + 18);
    }
    if (row >= 0 && row < m_story.rowCount()) {
        m_lines->setCurrentIndex(m_story.index(row, 0));
    }
}

void LifePage::setShowsPaid(bool shows) {
    m_showsPaid = shows;
    show(m_life);
}

void LifePage::enter() {
    m_lines->setCurrentIndex(m_story.index(m_story.rowCount() - 1, 0));
    m_lines->scrollToBottom();
    m_lines->setFocus(Qt::OtherFocusReason);
}

void LifePage::paintEvent(QPaintEvent*) { paintPaper(*this); }

} // namespace rw::ui
