// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/bench_station.h"

#include "ui/bench/card_view.h"
#include "ui/bench/cut_strip.h"
#include "ui/bench/finish_strip.h"
#include "ui/bench/lost_strip.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/text/bench_words.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/look.h"
#include "ui/widgets/row_delegate.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr int kQueueWidth = 380;
constexpr int kReasons = 8;

/// The queue. Its letters are the bench's keys: one that means nothing now must not jump to another racket.
class Queue final : public QListView {
public:
    using QListView::QListView;
    void keyboardSearch(const QString&) override {}
};
} // namespace

BenchStation::BenchStation(DeskRunner& runner, Shift& shift, QWidget* parent)
    : Station(parent)
    , m_shift(shift)
    , m_presenter(std::make_unique<BenchPresenter>(runner, shift))
    , m_queueView(new Queue(this))
    , m_machines(new Choice(this))
    , m_card(new CardView(this))
    , m_strip(new QStackedWidget(this))
    , m_prompt(new QLabel(m_strip))
    , m_cut(new CutStrip(m_strip))
    , m_lost(new LostStrip(m_strip))
    , m_finish(new FinishStrip(m_strip)) {
    build();
    makeKeys();
    connectPresenter();
    showMachines();
    showQueue();
    showCard();
}

BenchStation::~BenchStation() = default;

void BenchStation::build() {
    m_queueView->setModel(&m_queue);
    m_queueView->setItemDelegate(new RowDelegate(m_queueView));
    m_queueView->setAccessibleName(tr("What is next"));
    m_queueView->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_queueView->setWordWrap(true);
    m_queueView->setResizeMode(QListView::Adjust);
    m_queueView->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_machines->setAccessibleName(tr("Machine"));
    m_prompt->setFont(largeFont(*this, 1.6));
    m_prompt->setWordWrap(true);
    m_prompt->setMargin(16);
    m_prompt->setAutoFillBackground(true);
    m_prompt->setBackgroundRole(QPalette::Base);
    m_prompt->setAccessibleName(tr("What comes next"));
    for (QWidget* strip : QList<QWidget*>{m_prompt, m_cut, m_lost, m_finish}) {
        m_strip->addWidget(strip);
    }
    m_strip->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);

    auto* left = new QVBoxLayout;
    left->setSpacing(10);
    left->addWidget(m_queueView, 1);
    left->addWidget(m_machines);
    m_queueView->setFixedWidth(kQueueWidth);
    auto* right = new QVBoxLayout;
    right->setSpacing(10);
    right->addWidget(m_card, 1);
    right->addWidget(m_strip);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(14);
    layout->addLayout(left);
    layout->addLayout(right, 1);
    setTabOrder(m_queueView, m_machines);
    setTabOrder(m_machines, m_strip);
}

void BenchStation::makeKeys() {
    m_nextKey =
        addCommand(tr("&Next step"), {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)}, [this] { next(); });
    m_takeKey = addCommand(tr("&Take it"), {QKeySequence(Qt::Key_T)}, [this] { m_presenter->take(); });
    m_cutKey = addKey(tr("&Cut"), {QKeySequence(Qt::Key_C)}, [this] { openCut(); });
    m_lostKey = addKey(tr("&Lost a length"), {QKeySequence(Qt::Key_L)}, [this] { openLost(); });
    m_finishKey = addKey(tr("&Finished"), {QKeySequence(Qt::Key_F)}, [this] { openFinish(); });
    m_putDownKey = addCommand(tr("&Put down"), {QKeySequence(Qt::Key_P)}, [this] { m_presenter->putDown(); });
    m_machineKey = addKey(tr("Other &machine"), {QKeySequence(Qt::Key_M)}, [this] { nextMachine(); });
    addKey(tr("&History"), {QKeySequence(Qt::Key_F6)}, [this] { wantHistory(true); });
    addKey(tr("Of this f&rame"), {QKeySequence(Qt::SHIFT | Qt::Key_F6)}, [this] { wantHistory(false); });
    m_backKey = addKey(tr("&Back"), {QKeySequence(Qt::Key_Escape)}, [this] { closeStrip(); });

    // The second of the two keys of a lost length. They mean something only while it is asked.
    for (int digit = 1; digit <= kReasons; ++digit) {
        auto* key = new QAction(this);
        key->setShortcut(QKeySequence(Qt::Key_0 + digit));
        key->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(key, &QAction::triggered, this, [this, digit] { lose(digit); });
        m_reasonKeys << key;
    }
    auto* other = new QAction(this);
    other->setShortcut(QKeySequence(Qt::Key_Space));
    other->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(other, &QAction::triggered, this, [this] { m_lost->otherPiece(); });
    m_reasonKeys << other;
    addActions(m_reasonKeys);
    enableKeys();
}

void BenchStation::connectPresenter() {
    connect(m_presenter.get(), &BenchPresenter::queueChanged, this, &BenchStation::showQueue);
    connect(m_presenter.get(), &BenchPresenter::cardChanged, this, &BenchStation::showCard);
    connect(m_presenter.get(), &BenchPresenter::stepChanged, this, &BenchStation::showPrompt);
    connect(m_presenter.get(), &BenchPresenter::cut, this, [this](const desk::CutDone& done, Length length) {
        closeStrip();
        Q_EMIT said(cutDoneText(done, length));
    });
    connect(m_presenter.get(), &BenchPresenter::putDownDone, this, &BenchStation::closeStrip);
    connect(m_presenter.get(), &BenchPresenter::lost, this, [this](const Job& job, PieceRole role, LostReason reason) {
        closeStrip();
        Q_EMIT said(lostText(job, role, reason));
    });
    connect(m_presenter.get(), &BenchPresenter::finished, this, [this](const Job& job) {
        closeStrip();
        Q_EMIT said(finishedText(job));
    });
    connect(m_presenter.get(), &BenchPresenter::refused, this, [this](const Refusal& why) {
        if (m_strip->currentWidget() == m_cut) {
            m_cut->showRefusal(why);
        } else if (m_strip->currentWidget() == m_finish) {
            m_finish->showRefusal(why);
        } else {
            Q_EMIT said(sentenceFor(why));
        }
    });
    connect(m_queueView->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                if (!m_filling && current.isValid()) {
                    m_presenter->select(m_queue.at(current.row()).id);
                }
            });
    connect(m_machines, &QComboBox::currentIndexChanged, this, [this] {
        if (const qint64 id = m_machines->currentData().toLongLong(); id != 0) {
            m_shift.setMachine(MachineId::of(id));
        }
    });
    connect(&m_shift, &Shift::shopChanged, this, &BenchStation::showMachines);
    connect(&m_shift, &Shift::machineChanged, this, &BenchStation::showMachines);
}

void BenchStation::enter() {
    refresh();
    if (m_strip->currentWidget() == m_prompt) {
        m_queueView->setFocus(Qt::OtherFocusReason);
    }
}

void BenchStation::refresh() { m_presenter->refresh(); }

void BenchStation::showMachines() {
    const QSignalBlocker quiet(m_machines);
    m_machines->clear();
    if (m_shift.hasShop()) {
        for (const auto& machine : m_shift.shop().machines) {
            m_machines->addItem(tr("at %1, dial in %2").arg(fromUtf8(machine.name), fromUtf8(unitText(machine.unit))),
                                qint64{machine.id->value()});
        }
    }
    if (m_shift.machine()) {
        m_machines->setCurrentIndex(m_machines->findData(qint64{m_shift.machine()->value()}));
    }
    showPrompt();
}

void BenchStation::nextMachine() {
    if (m_machines->count() > 1) {
        m_machines->setCurrentIndex((m_machines->currentIndex() + 1) % m_machines->count());
    }
}

void BenchStation::showQueue() {
    m_filling = true;
    m_queue.setNow(m_shift.now(), m_shift.zone());
    m_queue.setRows(m_presenter->queue());
    if (m_presenter->selected()) {
        const int row = m_queue.rowOf(*m_presenter->selected());
        if (row >= 0) {
            m_queueView->setCurrentIndex(m_queue.index(row, 0));
        }
    }
    m_filling = false;
    showCard();
}

void BenchStation::showCard() {
    QString instead;
    if (m_presenter->selected()) {
        instead = tr("The card is being looked up.");
    } else if (m_presenter->isLoaded()) {
        instead = tr("Nothing waits for the bench.\nA racket comes here when the counter has logged it.");
    }
    m_card->show(m_presenter->card(), m_shift.zone(), instead);
    closeStripOfAnother();
    showPrompt();
}

bool BenchStation::stripFitsCard() const {
    const QWidget* strip = m_strip->currentWidget();
    if (strip == m_cut) {
        return m_presenter->isUncut(m_cut->piece());
    }
    if (strip == m_lost) {
        return m_presenter->isCut(m_lost->piece());
    }
    if (strip == m_finish) {
        return m_presenter->isAllCut(m_finish->job());
    }
    return true;
}

void BenchStation::closeStripOfAnother() {
    if (stripFitsCard()) {
        return;
    }
    const bool changedElsewhere = m_presenter->card().has_value();
    closeStrip();
    if (changedElsewhere) {
        Q_EMIT said(tr("This job was changed meanwhile. Look at its card."));
    }
}

void BenchStation::showPrompt() {
    QString words;
    switch (m_presenter->step()) {
    case BenchPresenter::Step::Nothing:
        break;
    case BenchPresenter::Step::Take:
        words = takeText(m_shift.machineName(*m_shift.machine()));
        break;
    case BenchPresenter::Step::Cut:
        words = cutText(*m_presenter->nextToCut());
        break;
    case BenchPresenter::Step::Finish:
        words = finishText();
        break;
    }
    m_prompt->setText(words.isEmpty() ? QString() : tr("Enter ▸ %1").arg(words));
    enableKeys();
}

void BenchStation::enableKeys() {
    // While a strip is open its own keys count, and what they would do to the card waits.
    const bool open = m_strip->currentWidget() != m_prompt;
    const auto step = m_presenter->step();
    m_nextKey->setEnabled(open || step != BenchPresenter::Step::Nothing);
    m_takeKey->setEnabled(!open && step == BenchPresenter::Step::Take);
    m_cutKey->setEnabled(!open && step == BenchPresenter::Step::Cut);
    m_finishKey->setEnabled(!open && step == BenchPresenter::Step::Finish);
    m_putDownKey->setEnabled(!open && m_presenter->canPutDown());
    m_lostKey->setEnabled(!open && m_presenter->canLose());
    m_machineKey->setEnabled(!open && m_machines->count() > 1);
    m_backKey->setEnabled(open);
    for (auto* key : m_reasonKeys) {
        key->setEnabled(m_strip->currentWidget() == m_lost);
    }
    Q_EMIT keysChanged();
}

void BenchStation::next() {
    if (m_strip->currentWidget() == m_cut) {
        if (m_cut->isReadable()) {
            m_presenter->confirmCut(m_cut->piece(), m_cut->lot(), *m_cut->length(), m_cut->measuredLeft());
        }
        return;
    }
    if (m_strip->currentWidget() == m_finish) {
        if (const auto pair = m_finish->strung()) {
            m_presenter->finish(m_finish->job(), *pair, m_finish->words());
        }
        return;
    }
    switch (m_presenter->step()) {
    case BenchPresenter::Step::Nothing:
        break;
    case BenchPresenter::Step::Take:
        m_presenter->take();
        break;
    case BenchPresenter::Step::Cut:
        openCut();
        break;
    case BenchPresenter::Step::Finish:
        openFinish();
        break;
    }
}

void BenchStation::openCut() {
    if (m_presenter->step() == BenchPresenter::Step::Cut) {
        const auto* piece = m_presenter->nextToCut();
        m_strip->setCurrentWidget(m_cut);
        m_cut->start(m_presenter->inHand(*piece), *piece, m_presenter->lotsFor(*piece));
        enableKeys();
    }
}

void BenchStation::openLost() {
    if (!m_presenter->canLose()) {
        return;
    }
    std::vector<LostStrip::Cut> cuts;
    for (const auto* piece : m_presenter->cutPieces()) {
        cuts.push_back({m_presenter->inHand(*piece), cutPieceText(piece->piece)});
    }
    m_lost->start(std::move(cuts));
    m_strip->setCurrentWidget(m_lost);
    m_queueView->setFocus(Qt::OtherFocusReason);
    enableKeys();
}

void BenchStation::openFinish() {
    if (m_presenter->canFinish()) {
        m_strip->setCurrentWidget(m_finish);
        m_finish->start(*m_presenter->card());
        enableKeys();
    }
}

void BenchStation::lose(int digit) {
    if (m_strip->currentWidget() == m_lost) {
        m_presenter->lose(m_lost->piece(), LostStrip::reasonOfKey(digit));
    }
}

void BenchStation::wantHistory(bool ofRacket) {
    const auto& card = m_presenter->card();
    if (!card) {
        Q_EMIT said(tr("History is that of a racket at the bench, and there is none."));
    } else if (ofRacket) {
        Q_EMIT historyWanted({*card->racket.id, whoseRacketText(*card)});
    } else {
        Q_EMIT historyWanted({*card->frame.id, fromUtf8(card->frame.name)});
    }
}

void BenchStation::closeStrip() {
    if (m_strip->currentWidget() != m_prompt) {
        m_strip->setCurrentWidget(m_prompt);
        m_queueView->setFocus(Qt::OtherFocusReason);
        showPrompt();
    }
}

} // namespace rw::ui
