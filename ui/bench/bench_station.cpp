// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/bench_station.h"

#include "ui/bench/bench_strips.h"
#include "ui/bench/card_view.h"
#include "ui/bench/machine_choice.h"
#include "ui/bench/queue_view.h"
#include "ui/text/bench_words.h"
#include "ui/text/format.h"
#include "ui/text/tag_words.h"
#include "ui/widgets/row_delegate.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kQueueWidth = 380;
constexpr int kReasons = 8;
} // namespace

BenchStation::BenchStation(DeskRunner& runner, Shift& shift, QWidget* parent)
    : Station(parent)
    , m_shift(shift)
    , m_presenter(std::make_unique<BenchPresenter>(runner, shift))
    , m_queueView(new QueueView(this))
    , m_machines(new MachineChoice(shift, this))
    , m_card(new CardView(this))
    , m_strips(new BenchStrips(*m_presenter, this)) {
    build();
    makeKeys();
    makeReasonKeys();
    connectPresenter();
    connectStrips();
    sayWhatWasDone();
    showQueue();
}

BenchStation::~BenchStation() = default;

QListView* BenchStation::queue() const { return m_queueView; }
QComboBox* BenchStation::machines() const { return m_machines->line(); }
CutStrip* BenchStation::cutStrip() const { return m_strips->cut(); }
FinishStrip* BenchStation::finishStrip() const { return m_strips->finish(); }
LostStrip* BenchStation::lostStrip() const { return m_strips->lost(); }
UndoStrip* BenchStation::undoStrip() const { return m_strips->undo(); }
QLabel* BenchStation::prompt() const { return m_strips->prompt(); }

void BenchStation::build() {
    m_queueView->setModel(&m_queue);
    m_queueView->setItemDelegate(new RowDelegate(m_queueView));
    m_queueView->setAccessibleName(tr("What is next"));
    m_queueView->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_queueView->setWordWrap(true);
    m_queueView->setResizeMode(QListView::Adjust);
    m_queueView->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_queueView->setFixedWidth(kQueueWidth);
    m_machines->line()->setFixedWidth(kQueueWidth);

    auto* left = new QVBoxLayout;
    left->setSpacing(10);
    left->addWidget(m_queueView, 1);
    left->addWidget(m_machines->line());
    auto* right = new QVBoxLayout;
    right->setSpacing(10);
    right->addWidget(m_card, 1);
    right->addWidget(m_strips);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(14);
    layout->addLayout(left);
    layout->addLayout(right, 1);
    setTabOrder(m_queueView, m_machines->line());
    setTabOrder(m_machines->line(), m_strips);
}

void BenchStation::makeKeys() {
    m_nextKey =
        addCommand(tr("&Next step"), {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)}, [this] { next(); });
    m_onKey = addCommand(tr("&Step on"), {QKeySequence(Qt::Key_Space)}, [this] { m_presenter->goOn(); });
    m_backwardKey = addCommand(tr("Step bac&k"), {QKeySequence(Qt::Key_Backspace)}, [this] { m_presenter->goBack(); });
    m_takeKey = addCommand(tr("&Take it"), {QKeySequence(Qt::Key_T)}, [this] { m_presenter->take(); });
    m_cutKey = addKey(tr("&Cut"), {QKeySequence(Qt::Key_C)}, [this] { m_strips->openCut(); });
    m_asideKey = addCommand(tr("Keep the end as a remn&ant"), {QKeySequence(Qt::CTRL | Qt::Key_R)},
                            [this] { m_strips->setEndAside(); });
    m_lostKey = addKey(tr("&Lost a length"), {QKeySequence(Qt::Key_L)}, [this] { openLost(); });
    m_nodKey = addCommand(tr("No&d to the change"), {QKeySequence(Qt::Key_N)}, [this] { m_presenter->nod(); });
    m_finishKey = addKey(tr("&Finished"), {QKeySequence(Qt::Key_F)}, [this] { m_strips->openFinish(); });
    m_putDownKey = addCommand(tr("&Put down"), {QKeySequence(Qt::Key_P)}, [this] { m_presenter->putDown(); });
    m_undoKey = addKey(tr("&Undo"), {QKeySequence(QKeySequence::Undo)}, [this] { m_presenter->askLastDone(); });
    m_machineKey = addKey(tr("Other &machine"), {QKeySequence(Qt::Key_M)}, [this] { m_machines->turnToNext(); });
    addKey(tr("&History"), {QKeySequence(Qt::Key_F6)}, [this] { wantHistory(true); });
    addKey(tr("Of this f&rame"), {QKeySequence(Qt::SHIFT | Qt::Key_F6)}, [this] { wantHistory(false); });
    m_backKey = addKey(tr("&Back"), {QKeySequence(Qt::Key_Escape)}, [this] { m_strips->close(); });
}

void BenchStation::makeReasonKeys() {
    // The second of the two keys of a lost length. They mean something only while it is asked.
    const auto add = [this](Qt::Key key, auto act) {
        auto* action = new QAction(this);
        action->setShortcut(QKeySequence(key));
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, act);
        m_reasonKeys << action;
    };
    for (int digit = 1; digit <= kReasons; ++digit) {
        add(static_cast<Qt::Key>(Qt::Key_0 + digit), [this, digit] { m_strips->lose(digit); });
    }
    add(Qt::Key_Space, [this] { m_strips->lost()->otherPiece(); });
    addActions(m_reasonKeys);
    enableKeys();
}

void BenchStation::connectPresenter() {
    connect(m_presenter.get(), &BenchPresenter::queueChanged, this, &BenchStation::showQueue);
    connect(m_presenter.get(), &BenchPresenter::cardChanged, this, &BenchStation::showCard);
    connect(m_presenter.get(), &BenchPresenter::actingChanged, this, &BenchStation::showPrompt);
    connect(m_presenter.get(), &BenchPresenter::otherLies, this, [this](std::int64_t number) {
        m_strips->sayOtherLies(number);
        showPrompt();
    });
    connect(m_presenter.get(), &BenchPresenter::refused, m_strips, &BenchStrips::showRefusal);
    connect(m_presenter.get(), &BenchPresenter::lastDoneKnown, this, [this](const std::optional<desk::LastDone>& last) {
        if (last) {
            m_strips->openUndo(*last);
        } else {
            Q_EMIT said(nothingToTakeBackText());
        }
    });
    connect(m_queueView->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                if (!m_filling && current.isValid()) {
                    m_presenter->select(m_queue.at(current.row()).id);
                }
            });
    connect(m_queueView, &QueueView::tagTyped, this, &BenchStation::showPrompt);
    connect(m_queueView, &QueueView::tagEntered, this, &BenchStation::openTag);
    connect(m_presenter.get(), &BenchPresenter::notAtTheBench, this,
            [this](std::int64_t number, const std::optional<JobState>& state) {
                Q_EMIT said(notAtTheBenchText(number, state));
            });
    connect(m_machines, &MachineChoice::shown, this, &BenchStation::showPrompt);
}

void BenchStation::connectStrips() {
    connect(m_strips, &BenchStrips::turned, this, &BenchStation::enableKeys);
    connect(m_strips, &BenchStrips::said, this, &BenchStation::said);
    connect(m_strips, &BenchStrips::keyboardWanted, m_queueView,
            [this] { m_queueView->setFocus(Qt::OtherFocusReason); });
    connect(m_strips, &BenchStrips::closed, this, [this] {
        m_queueView->setFocus(Qt::OtherFocusReason);
        showPrompt();
    });
}

void BenchStation::sayWhatWasDone() {
    const auto done = [this](const QString& words) {
        m_strips->close();
        Q_EMIT said(words);
    };
    auto* presenter = m_presenter.get();
    connect(presenter, &BenchPresenter::cut, this,
            [done](const desk::CutDone& cut, Length length) { done(cutDoneText(cut, length)); });
    connect(presenter, &BenchPresenter::putDownDone, m_strips, &BenchStrips::close);
    connect(presenter, &BenchPresenter::lost, this,
            [done](const Job& job, PieceRole role, LostReason reason) { done(lostText(job, role, reason)); });
    connect(presenter, &BenchPresenter::finished, this, [done](const Job& job) { done(finishedText(job)); });
    connect(presenter, &BenchPresenter::nodded, this, [done](const Job& job) { done(noddedText(job)); });
    connect(presenter, &BenchPresenter::endSetAside, this,
            [done](const desk::EndSetAside& aside, PieceRole role) { done(endSetAsideText(aside, role)); });
    connect(presenter, &BenchPresenter::takenBack, this,
            [done](const desk::LastDone& last) { done(takenBackText(last)); });
}

void BenchStation::enter() {
    refresh();
    if (!m_strips->isOpen()) {
        m_queueView->setFocus(Qt::OtherFocusReason);
    }
}

void BenchStation::refresh() { m_presenter->refresh(); }

std::optional<JobId> BenchStation::paperJob() const { return m_presenter->selected(); }

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
        instead = cardIsComingText();
    } else if (m_presenter->isLoaded()) {
        instead = nothingWaitsText();
    }
    m_card->show(m_presenter->card(), m_shift.zone(), instead);
    m_strips->closeWithoutItsCard();
    showPrompt();
}

void BenchStation::showPrompt() {
    QString words;
    switch (m_presenter->step()) {
    case BenchPresenter::Step::Nothing:
        break;
    case BenchPresenter::Step::Take:
        words = whatTakingSays();
        break;
    case BenchPresenter::Step::Cut:
        words = cutText(*m_presenter->nextToCut());
        break;
    case BenchPresenter::Step::Finish:
        words = finishText();
        break;
    }
    QStringList lines;
    if (!m_queueView->typedTag().isEmpty()) {
        lines << tagTypedText(m_queueView->typedTag());
        words.clear(); // Enter is the tag's now
    }
    if (m_presenter->canNod()) {
        const desk::JobCard& card = *m_presenter->card();
        lines << tr("N ▸ %1").arg(nodText(*card.change, card.job.asked));
    }
    if (!words.isEmpty()) {
        lines << tr("Enter ▸ %1").arg(words);
    }
    m_strips->prompt()->setText(lines.join(QLatin1Char('\n')));
    enableKeys();
}

QString BenchStation::whatTakingSays() const {
    const QString machine = m_shift.machineName(*m_shift.machine());
    const auto other = m_presenter->lyingThere();
    return m_presenter->isAskedAboutOther() ? takeAllTheSameText(machine, *other) : takeText(machine, other);
}

void BenchStation::enableKeys() {
    // While a strip is open its own keys count, and what they would do to the card waits.
    const bool open = m_strips->isOpen();
    const auto step = m_presenter->step();
    m_nextKey->setEnabled(open || step != BenchPresenter::Step::Nothing);
    m_onKey->setEnabled(!open && m_presenter->canGoOn());
    m_backwardKey->setEnabled(!open && m_presenter->canGoBack());
    m_takeKey->setEnabled(!open && step == BenchPresenter::Step::Take);
    m_cutKey->setEnabled(!open && step == BenchPresenter::Step::Cut);
    m_asideKey->setEnabled(m_strips->isCutting());
    m_finishKey->setEnabled(!open && step == BenchPresenter::Step::Finish);
    m_putDownKey->setEnabled(!open && m_presenter->canPutDown());
    m_lostKey->setEnabled(!open && m_presenter->canLose());
    m_nodKey->setEnabled(!open && m_presenter->canNod());
    m_undoKey->setEnabled(!open && m_presenter->canTakeBack());
    m_machineKey->setEnabled(!open && m_machines->hasOther());
    m_backKey->setEnabled(open);
    for (auto* key : m_reasonKeys) {
        key->setEnabled(m_strips->isLosing());
    }
    Q_EMIT keysChanged();
}

void BenchStation::next() { m_strips->next(); }

void BenchStation::openTag(std::int64_t number) {
    const auto& lines = m_queue.rows();
    const auto line = std::ranges::find(lines, number, &desk::JobLine::number);
    if (line == lines.end()) {
        m_presenter->askWhereItIs(number);
    } else {
        m_queueView->setCurrentIndex(m_queue.index(static_cast<int>(line - lines.begin()), 0));
    }
}

void BenchStation::openLost() { m_strips->openLost(); }

void BenchStation::wantHistory(bool ofRacket) {
    const auto& card = m_presenter->card();
    if (!card) {
        Q_EMIT said(noRacketForHistoryText());
    } else if (ofRacket) {
        Q_EMIT historyWanted({*card->racket.id, whoseRacketText(*card)});
    } else {
        Q_EMIT historyWanted({*card->frame.id, fromUtf8(card->frame.name)});
    }
}

} // namespace rw::ui
