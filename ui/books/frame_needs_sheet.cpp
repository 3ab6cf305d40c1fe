// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/frame_needs_sheet.h"

#include "ui/books/page_heading.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/lesson_words.h"
#include "ui/text/set_up_words.h"
#include "ui/text/words.h"
#include "ui/widgets/figures_table.h"
#include "ui/widgets/head_view.h"
#include "ui/widgets/look.h"

#include <QGridLayout>
#include <QPainter>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kColumnsOfWords = 2;
constexpr int kToldColumn = 2;

NeedCurve curveOf(const desk::NeedStory& story, const QTimeZone& zone) {
    NeedCurve curve{.jobs = {}, .predicted = story.predictedMm, .top = {}, .bottom = {}, .from = {}, .to = {}};
    for (const desk::NeedStep& step : story.steps) {
        curve.jobs.push_back({.at = step.told.at,
                              .low = step.lowMm,
                              .high = step.highMm,
                              .learned = step.learnedMm,
                              .spread = 2 * step.learnedSdMm});
    }
    const NeedRange range = needCurveRange(curve);
    curve.top = aboutLengthText(range.high);
    curve.bottom = aboutLengthText(range.low);
    curve.from = dateText(story.steps.front().told.at, zone);
    curve.to = dateText(story.steps.back().told.at, zone);
    if (curve.to == curve.from) {
        curve.to.clear();
    }
    return curve;
}
} // namespace

NeedCurveView::NeedCurveView(QWidget* parent)
    : QWidget(parent) {
    setMinimumHeight(150);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("The need from job to job, drawn; the table says the same in numbers"));
}

void NeedCurveView::show(std::optional<NeedCurve> curve) {
    m_curve = std::move(curve);
    setVisible(m_curve.has_value());
    update();
}

void NeedCurveView::paintEvent(QPaintEvent*) {
    if (m_curve) {
        QPainter painter(this);
        m_curve->textHeight = QFontMetricsF(font()).ascent();
        drawNeedCurve(painter, QRectF(rect()).adjusted(2, 4, -2, -2), *m_curve, programPalette());
    }
}

FrameNeedsSheet::FrameNeedsSheet(QWidget* parent)
    : QWidget(parent)
    , m_head(new HeadView(this))
    , m_title(pageWords(this))
    , m_facts(pageWords(this))
    , m_learned(pageWords(this))
    , m_legend(pageWords(this))
    , m_curve(new NeedCurveView(this))
    , m_table(new FiguresTable(&m_figures, kToldColumn, tr("Every cut of this part, the newest first"), this)) {
    m_title->setFont(largeFont(*this, 1.2));
    QPalette quiet = m_legend->palette();
    quiet.setColor(QPalette::WindowText, quiet.color(QPalette::PlaceholderText));
    m_legend->setPalette(quiet);
    auto* words = new QVBoxLayout;
    words->setSpacing(6);
    words->addWidget(m_facts);
    words->addWidget(m_title);
    words->addWidget(m_learned);
    words->addStretch(1);
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setHorizontalSpacing(20);
    layout->addWidget(m_head, 0, 0);
    layout->addLayout(words, 0, 1);
    layout->addWidget(m_curve, 1, 0, 1, 2);
    layout->addWidget(m_legend, 2, 0, 1, 2);
    layout->addWidget(m_table, 3, 0, 1, 2);
    layout->setColumnStretch(1, 1);
    layout->setRowStretch(1, 3);
    layout->setRowStretch(3, 4);
    setFocusProxy(m_table);
}

void FrameNeedsSheet::show(const desk::FrameNeeds& needs, const QTimeZone& zone) {
    m_needs = needs;
    m_zone = zone;
    const auto& stories = m_needs->stories;
    const auto same =
        std::ranges::find(stories, m_group, [](const desk::NeedStory& story) { return std::optional(story.group); });
    m_story = same == stories.end() ? 0 : static_cast<std::size_t>(same - stories.begin());
    m_head->setPlan(needs.head);
    QStringList facts{frameText(needs.frame), headText(needs.frame)};
    m_facts->setText(facts.join(QLatin1Char('\n')));
    showStory();
}

void FrameNeedsSheet::turn(int by) {
    if (hasOther()) {
        const auto count = static_cast<int>(m_needs->stories.size());
        m_story = static_cast<std::size_t>((static_cast<int>(m_story) + by + count) % count);
        showStory();
    }
}

void FrameNeedsSheet::showStory() {
    std::vector<FigureRow> rows;
    const bool any = !m_needs->stories.empty();
    m_legend->setVisible(any);
    m_table->setVisible(any);
    m_title->setVisible(any);
    if (any) {
        const desk::NeedStory& story = m_needs->stories[m_story];
        m_group = story.group;
        m_title->setText(needStoryTitle(story, m_story + 1, m_needs->stories.size()));
        m_learned->setText(needStoryText(story));
        m_curve->show(curveOf(story, m_zone));
        m_legend->setText(needLegendText());
        for (auto step = story.steps.rbegin(); step != story.steps.rend(); ++step) {
            rows.push_back(
                {{shortDateText(step->told.at, story.steps.back().told.at, m_zone), QString::number(step->told.number),
                  toldText(*step), lengthText(step->told.cut), aboutLengthText(step->learnedMm)}});
        }
    } else {
        m_learned->setText(noCutsToldText());
        m_curve->show(std::nullopt);
    }
    m_figures.setFigures({tr("cut on"), tr("job"), tr("what it told"), tr("cut"), tr("expected next")},
                         kColumnsOfWords + 1, std::move(rows));
    m_table->resizeToFigures();
}

} // namespace rw::ui
