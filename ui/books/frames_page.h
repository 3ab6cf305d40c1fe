// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/set_up_page.h"
#include "ui/port/desk_runner.h"

#include <QLineEdit>

#include <memory>

namespace rw::ui {

class FrameNeedsSheet;
class FrameSheet;
class FramesPresenter;
class Shift;
class UsualCutSheet;

/// "Frames": what the shop knows of each, found by typing; and when one is opened, its usual cuts.
class FramesPage final : public SetUpPage {
    Q_OBJECT

public:
    FramesPage(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~FramesPage() override;

    [[nodiscard]] QString name() const override { return tr("Frames"); }
    void refresh() override;
    void leave() override;
    bool back() override;

    [[nodiscard]] QLineEdit* search() const { return m_search; }
    [[nodiscard]] FrameNeedsSheet* needsSheet() const { return m_needs; }
    [[nodiscard]] bool isFrameOpen() const; ///< the cuts of one frame are shown

    void openCurrent(); ///< of the frames: the frame; of its rows: the sheet
    void openNew();     ///< a frame; a usual cut
    void openNeeds();   ///< every cut of the frame, and what was learned from them

protected:
    void enableKeys() override;
    QWidget* whereWorkBegins() override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void makeKeys();
    void connectPresenter();
    void show();
    void showFrames();
    void showCuts(int row); ///< -1: the row stays
    void showNeeds();
    void confirm();
    [[nodiscard]] bool isWriting() const; ///< a sheet is open in which something is changed

    Shift& m_shift;
    std::unique_ptr<FramesPresenter> m_presenter;
    QLineEdit* m_search;
    FrameSheet* m_frame;
    UsualCutSheet* m_cut;
    FrameNeedsSheet* m_needs;
    bool m_needsWanted = false; ///< until they have been read
    int m_frameRow = 0; ///< where the keyboard was among the frames
    QAction* m_editKey = nullptr;
    QAction* m_newKey = nullptr;
    QAction* m_forgetKey = nullptr;
    QAction* m_needsKey = nullptr;
    QAction* m_beforeKey = nullptr;
    QAction* m_afterKey = nullptr;
    QAction* m_confirmKey = nullptr;
};

} // namespace rw::ui
