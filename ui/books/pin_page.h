// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/books_page.h"
#include "ui/widgets/sheet.h"

#include <QLabel>
#include <QLineEdit>

namespace rw::ui {

class OwnerPresenter;

/// "Owner's PIN": sets the PIN that purchase prices, costs and margins are shown with, changes it, does without it.
class PinPage final : public BooksPage {
    Q_OBJECT

public:
    PinPage(OwnerPresenter& owner, QWidget* parent = nullptr);

    [[nodiscard]] QString name() const override { return tr("Owner's PIN"); }
    void enter() override;
    void refresh() override;
    void leave() override; ///< what was typed is gone

    [[nodiscard]] QLineEdit* pin() const { return m_pin; }
    [[nodiscard]] QLineEdit* again() const { return m_again; }
    [[nodiscard]] QString problem() const; ///< beside whichever line it stands

private:
    void showState();
    void clear();
    void clearProblems();
    void keep();
    void doWithout();

    OwnerPresenter& m_owner;
    QLabel* m_words;
    Sheet* m_sheet;
    QLineEdit* m_current;
    QLineEdit* m_pin;
    QLineEdit* m_again;
    Sheet::Line m_currentLine{};
    Sheet::Line m_pinLine{};
    Sheet::Line m_againLine{};
    QAction* m_withoutKey = nullptr;
};

} // namespace rw::ui
