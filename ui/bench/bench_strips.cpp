// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/bench_strips.h"

#include "ui/text/bench_words.h"
#include "ui/text/sentences.h"
#include "ui/widgets/look.h"

namespace rw::ui {

BenchStrips::BenchStrips(BenchPresenter& presenter, QWidget* parent)
    : QStackedWidget(parent)
    , m_presenter(presenter)
    , m_prompt(new QLabel(this))
    , m_cut(new CutStrip(this))
    , m_lost(new LostStrip(this))
    , m_finish(new FinishStrip(this))
    , m_undo(new UndoStrip(this)) {
    m_prompt->setFont(largeFont(*this, 1.6));
    m_prompt->setWordWrap(true);
    m_prompt->setMargin(16);
    m_prompt->setAutoFillBackground(true);
    m_prompt->setBackgroundRole(QPalette::Base);
    m_prompt->setAccessibleName(tr("What comes next"));
    for (QWidget* strip : QList<QWidget*>{m_prompt, m_cut, m_lost, m_finish, m_undo}) {
        addWidget(strip);
    }
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

void BenchStrips::turnTo(QWidget* strip) {
    setCurrentWidget(strip);
    Q_EMIT turned();
}

void BenchStrips::next() {
    if (isOpen()) {
        confirmStrip();
        return;
    }
    switch (m_presenter.step()) {
    case BenchPresenter::Step::Nothing:
        break;
    case BenchPresenter::Step::Take:
        m_presenter.take();
        break;
    case BenchPresenter::Step::Cut:
        openCut();
        break;
    case BenchPresenter::Step::Finish:
        openFinish();
        break;
    }
}

void BenchStrips::confirmStrip() {
    if (isCutting()) {
        if (m_cut->mayBeConfirmed()) {
            m_presenter.confirmCut(m_cut->piece(), m_cut->lot(), *m_cut->length(), m_cut->measuredLeft());
        }
    } else if (currentWidget() == m_finish) {
        const auto pair = m_finish->strung();
        const auto tails = pair ? m_finish->tails() : std::nullopt;
        if (tails) {
            m_presenter.finish(m_finish->job(), *pair, m_finish->words(), *tails);
        }
    } else if (currentWidget() == m_undo) {
        m_presenter.takeBack(m_undo->last());
    }
}

void BenchStrips::openCut() {
    if (m_presenter.step() == BenchPresenter::Step::Cut) {
        const auto* piece = m_presenter.nextToCut();
        setCurrentWidget(m_cut);
        m_cut->start(m_presenter.inHand(*piece), *piece, m_presenter.lotsFor(*piece));
        Q_EMIT turned();
    }
}

void BenchStrips::openLost() {
    if (!m_presenter.canLose()) {
        return;
    }
    std::vector<LostStrip::Cut> cuts;
    for (const auto* piece : m_presenter.cutPieces()) {
        cuts.push_back({m_presenter.inHand(*piece), cutPieceText(piece->piece)});
    }
    m_lost->start(std::move(cuts));
    setCurrentWidget(m_lost);
    Q_EMIT keyboardWanted();
    Q_EMIT turned();
}

void BenchStrips::openFinish() {
    if (!m_presenter.canFinish()) {
        return;
    }
    const desk::JobCard& card = *m_presenter.card();
    if (card.change) {
        Q_EMIT said(nodFirstText(*card.change, card.job.asked));
        return;
    }
    setCurrentWidget(m_finish);
    m_finish->start(card);
    Q_EMIT turned();
}

void BenchStrips::openUndo(const desk::LastDone& last) {
    if (isOpen()) {
        return; // something else was begun before the answer came
    }
    m_undo->start(last);
    setCurrentWidget(m_undo);
    Q_EMIT keyboardWanted();
    Q_EMIT turned();
}

void BenchStrips::lose(int digit) {
    if (isLosing()) {
        m_presenter.lose(m_lost->piece(), LostStrip::reasonOfKey(digit));
    }
}

void BenchStrips::setEndAside() {
    if (!isCutting() || !m_cut->isReadable()) {
        return;
    }
    const auto lot = m_cut->lot();
    const auto measured = m_cut->measuredLeft();
    if (!lot || !measured) {
        m_cut->askToMeasure();
        return;
    }
    m_presenter.setEndAside(m_cut->piece(), *lot, *measured, *m_cut->length());
}

void BenchStrips::close() {
    if (isOpen()) {
        turnTo(m_prompt);
        Q_EMIT closed();
    }
}

bool BenchStrips::fitsCard() const {
    if (isCutting()) {
        return m_presenter.isUncut(m_cut->piece());
    }
    if (isLosing()) {
        return m_presenter.isCut(m_lost->piece());
    }
    return currentWidget() != m_finish || m_presenter.isAllCut(m_finish->job());
}

void BenchStrips::closeWithoutItsCard() {
    if (fitsCard()) {
        return;
    }
    const bool changedElsewhere = m_presenter.card().has_value();
    close();
    if (changedElsewhere) {
        Q_EMIT said(jobChangedText());
    }
}

void BenchStrips::sayOtherLies(std::int64_t number) {
    if (isCutting() && m_presenter.card()) {
        m_cut->warn(cutAllTheSameText(number, m_presenter.card()->job.number));
    }
}

void BenchStrips::showRefusal(const Refusal& why) {
    if (isCutting()) {
        m_cut->showRefusal(why);
    } else if (currentWidget() == m_finish) {
        m_finish->showRefusal(why);
    } else if (currentWidget() == m_undo) {
        m_undo->showRefusal(why);
    } else {
        Q_EMIT said(sentenceFor(why));
    }
}

} // namespace rw::ui
