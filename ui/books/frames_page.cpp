// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/frames_page.h"

#include "ui/books/frame_needs_sheet.h"
#include "ui/books/frame_sheet.h"
#include "ui/books/usual_cut_sheet.h"
#include "ui/presenter/frames_presenter.h"
#include "ui/presenter/shift.h"
#include "ui/text/format.h"
#include "ui/text/set_up_words.h"

#include <QKeyEvent>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kFirstCut = 1; ///< the row above is the frame itself
}

FramesPage::FramesPage(DeskRunner& runner, Shift& shift, QWidget* parent)
    : SetUpPage(tr("Frames"), tr("Frames that the shop knows"), parent)
    , m_shift(shift)
    , m_presenter(std::make_unique<FramesPresenter>(runner, shift))
    , m_search(new QLineEdit(this))
    , m_frame(new FrameSheet(this))
    , m_cut(new UsualCutSheet(this))
    , m_needs(new FrameNeedsSheet(this)) {
    m_search->setAccessibleName(tr("Find a frame"));
    m_search->setPlaceholderText(tr("a piece of its name"));
    m_search->installEventFilter(this);
    addAboveList(m_search);
    setTabOrder(m_search, list());
    addTallSheet(m_frame);
    addSheet(m_cut);
    addTallSheet(m_needs);
    makeKeys();
    connectPresenter();
    enableKeys();
}

FramesPage::~FramesPage() = default;

void FramesPage::makeKeys() {
    m_editKey = addKey(tr("&Open"), enterKeys(), [this] { openCurrent(); });
    m_newKey = addKey(tr("A &new frame"), {QKeySequence(Qt::CTRL | Qt::Key_N), QKeySequence(Qt::Key_N)},
                      [this] { openNew(); });
    m_forgetKey = addCommand(tr("&Forget the cut"), {QKeySequence(Qt::Key_Delete)}, [this] {
        const auto cut = static_cast<std::size_t>(currentRow() - kFirstCut);
        m_presenter->dropCut(m_presenter->chosen()->usualCuts[cut]);
    });
    m_needsKey = addKey(tr("Its c&uts, and what they say"), {QKeySequence(Qt::Key_L)}, [this] { openNeeds(); });
    m_beforeKey = addKey(tr("Part &before"), {QKeySequence(Qt::Key_Left)}, [this] { m_needs->turn(-1); });
    m_afterKey = addKey(tr("Part &after"), {QKeySequence(Qt::Key_Right)}, [this] { m_needs->turn(1); });
    m_confirmKey = addCommand(tr("&Keep it"), enterKeys(), [this] { confirm(); });
}

void FramesPage::connectPresenter() {
    auto* presenter = m_presenter.get();
    connect(m_search, &QLineEdit::textEdited, presenter, &FramesPresenter::find);
    connect(presenter, &FramesPresenter::changed, this, &FramesPage::show);
    connect(presenter, &FramesPresenter::kept, this, [this](const FrameModel& frame) {
        closeSheet();
        Q_EMIT said(tr("%1 is kept. What is known of it counts from the next job on.").arg(fromUtf8(frame.name)));
    });
    connect(presenter, &FramesPresenter::cutKept, this, [this](const desk::UsualCut& cut) {
        closeSheet();
        Q_EMIT said(tr("%1: %2 is the usual cut.").arg(usualCutTitle(cut), usualCutText(cut)));
    });
    connect(presenter, &FramesPresenter::cutDropped, this, [this] { Q_EMIT said(tr("The usual cut is forgotten.")); });
    connect(presenter, &FramesPresenter::refused, this,
            [this](const Refusal& why) { tellRefusal(why, m_frame, m_cut); });
}

void FramesPage::refresh() { m_presenter->open(); }

void FramesPage::leave() { m_presenter->close(); }

bool FramesPage::isFrameOpen() const { return m_presenter->chosen().has_value(); }

QWidget* FramesPage::whereWorkBegins() { return isFrameOpen() ? static_cast<QWidget*>(list()) : m_search; }

bool FramesPage::back() {
    if (SetUpPage::back()) {
        m_presenter->study(false);
        return true;
    }
    if (!isFrameOpen()) {
        return false;
    }
    m_presenter->choose(std::nullopt);
    show();
    setCurrentRow(m_frameRow);
    enter();
    return true;
}

void FramesPage::show() {
    const bool open = isFrameOpen();
    const bool turned = open != m_search->isHidden();
    const bool keyboardMoves = turned && sheet() == nullptr && hasKeyboard();
    m_search->setVisible(!open);
    setTabOrder(m_search, list());
    if (open) {
        showCuts(turned ? 0 : -1);
    } else {
        showFrames();
    }
    showNeeds();
    if (keyboardMoves) {
        enter();
    }
}

void FramesPage::showFrames() {
    setHeading(tr("Frames"));
    std::vector<WordsRow> rows;
    for (const FrameModel& frame : m_presenter->frames()) {
        rows.push_back({fromUtf8(frame.name), QStringLiteral("%1 · %2").arg(frameText(frame), headText(frame)), {}});
    }
    QString words;
    if (rows.empty()) {
        words = m_presenter->typed().isEmpty()
                    ? tr("The shop knows no frame yet. Ctrl+N adds one; the counter adds them too, as they come in.")
                    : tr("No frame of that name. Ctrl+N adds it.");
    }
    showRows(std::move(rows), words);
}

void FramesPage::showCuts(int row) {
    const auto& known = *m_presenter->chosen();
    setHeading(fromUtf8(known.frame.name));
    std::vector<WordsRow> rows{{frameText(known.frame), headText(known.frame), tr("the frame")}};
    for (const auto& cut : known.usualCuts) {
        rows.push_back({usualCutTitle(cut), tr("usual cut"), usualCutText(cut)});
    }
    showRows(std::move(rows),
             known.usualCuts.empty() ? tr("No usual cut yet: lengths come from the head's measurements and the shop's own cuts. N adds one, L shows the cuts.")
                                     : tr("Its usual cuts are proposed until a racket has a cut of its own, or five "
                                          "tails were told. L shows every cut, and what they say."),
             row);
}

void FramesPage::openCurrent() {
    if (!m_editKey->isEnabled()) {
        return;
    }
    const int row = currentRow();
    if (!isFrameOpen()) {
        m_frameRow = row;
        m_presenter->choose(m_presenter->frames()[static_cast<std::size_t>(row)].id);
    } else if (row < kFirstCut) {
        const FrameModel frame = m_presenter->chosen()->frame;
        openSheet(m_frame);
        m_frame->start(frame, m_shift.usualUnit());
    } else {
        const auto cut = m_presenter->chosen()->usualCuts[static_cast<std::size_t>(row - kFirstCut)];
        openSheet(m_cut);
        m_cut->startWith(cut);
    }
}

void FramesPage::openNew() {
    if (!m_newKey->isEnabled()) {
        return;
    }
    if (isFrameOpen()) {
        const FrameModelId frame = *m_presenter->chosen()->frame.id;
        openSheet(m_cut);
        m_cut->startNew(frame);
        return;
    }
    FrameModel fresh;
    fresh.name = m_search->text().trimmed().toStdString();
    openSheet(m_frame);
    m_frame->start(fresh, m_shift.usualUnit());
}

void FramesPage::openNeeds() {
    if (!m_needsKey->isEnabled()) {
        return;
    }
    if (!isFrameOpen()) {
        m_frameRow = currentRow();
        m_presenter->choose(m_presenter->frames()[static_cast<std::size_t>(m_frameRow)].id);
    }
    m_needsWanted = true;
    m_presenter->study(true);
}

void FramesPage::showNeeds() {
    const auto& needs = m_presenter->needs();
    if (!needs || (!m_needsWanted && sheet() != m_needs)) {
        return;
    }
    m_needs->show(*needs, m_shift.zone());
    if (m_needsWanted && sheet() == nullptr) {
        const bool keyboardHere = hasKeyboard();
        openSheet(m_needs);
        if (keyboardHere) {
            enter();
        }
    }
    m_needsWanted = false;
}

bool FramesPage::isWriting() const { return sheet() != nullptr && sheet() != m_needs; }

void FramesPage::confirm() {
    if (sheet() == m_frame) {
        if (const auto frame = m_frame->frame()) {
            m_presenter->keep(*frame);
        }
    } else if (const auto cut = m_cut->cut()) {
        m_presenter->keepCut(*cut);
    }
}

void FramesPage::enableKeys() {
    if (m_confirmKey == nullptr) {
        return;
    }
    const bool sheetOpen = sheet() != nullptr;
    const bool studies = sheet() == m_needs;
    const bool open = isFrameOpen();
    const int row = currentRow();
    m_search->setEnabled(!sheetOpen);
    m_confirmKey->setEnabled(isWriting());
    m_editKey->setText(open ? tr("Chan&ge") : tr("&Open"));
    m_editKey->setEnabled(!sheetOpen && row >= 0);
    m_newKey->setText(open ? tr("A &new usual cut") : tr("A &new frame"));
    m_newKey->setEnabled(!sheetOpen && m_presenter->isLoaded());
    m_forgetKey->setEnabled(!sheetOpen && open && row >= kFirstCut);
    m_needsKey->setEnabled(!sheetOpen && row >= 0);
    m_beforeKey->setEnabled(studies && m_needs->hasOther());
    m_afterKey->setEnabled(studies && m_needs->hasOther());
    Q_EMIT keysChanged();
}

bool FramesPage::eventFilter(QObject* watched, QEvent* event) {
    // The arrow keys move through what was found while a name is typed.
    if (watched == m_search && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Down || key == Qt::Key_Up) {
            setCurrentRow(std::max(0, currentRow() + (key == Qt::Key_Down ? 1 : -1)));
            return true;
        }
    }
    return SetUpPage::eventFilter(watched, event);
}

} // namespace rw::ui
