// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/bench/cut_strip.h"
#include "ui/bench/finish_strip.h"
#include "ui/bench/lost_strip.h"
#include "ui/bench/undo_strip.h"
#include "ui/presenter/bench_presenter.h"

#include <QLabel>
#include <QStackedWidget>

namespace rw::ui {

/// Below the card: what comes next, or the strip in which it is said. A strip belongs to a piece or a job; when the
/// card shows that no longer, it closes.
class BenchStrips final : public QStackedWidget {
    Q_OBJECT

public:
    explicit BenchStrips(BenchPresenter& presenter, QWidget* parent = nullptr);

    [[nodiscard]] QLabel* prompt() const { return m_prompt; }
    [[nodiscard]] CutStrip* cut() const { return m_cut; }
    [[nodiscard]] LostStrip* lost() const { return m_lost; }
    [[nodiscard]] FinishStrip* finish() const { return m_finish; }
    [[nodiscard]] UndoStrip* undo() const { return m_undo; }
    [[nodiscard]] bool isOpen() const { return currentWidget() != m_prompt; }
    [[nodiscard]] bool isCutting() const { return currentWidget() == m_cut; }
    [[nodiscard]] bool isLosing() const { return currentWidget() == m_lost; }

    void next(); ///< what Enter does: the next step, or what the open strip asks
    void openCut();
    void openLost();
    void openFinish();
    void openUndo(const desk::LastDone& last);
    void lose(int digit); ///< of the open strip of a lost length
    void setEndAside();   ///< of the open strip of a cut
    void close();
    void closeWithoutItsCard();
    /// Beside a cut: another job lies on its machine.
    void sayOtherLies(std::int64_t number);
    /// Beside what was typed, where a strip is open; else as a message.
    void showRefusal(const Refusal& why);

Q_SIGNALS:
    void turned(); ///< another strip is in front
    void closed();
    void keyboardWanted(); ///< a strip without a line to write on is open
    void said(const QString& words);

private:
    void turnTo(QWidget* strip);
    [[nodiscard]] bool fitsCard() const;
    void confirmStrip();

    BenchPresenter& m_presenter;
    QLabel* m_prompt;
    CutStrip* m_cut;
    LostStrip* m_lost;
    FinishStrip* m_finish;
    UndoStrip* m_undo;
};

} // namespace rw::ui
