// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/books_page.h"
#include "ui/model/figures_model.h"

#include <QLabel>
#include <QStackedWidget>

#include <memory>

namespace rw::ui {

class EarnedPresenter;
class FiguresTable;
class OwnerPresenter;
class PinSheet;

/// "Earned": what the jobs of a month charged, what string and extras they took, and what is left. Where the shop has
/// an owner's PIN it is asked for here first.
class EarnedPage final : public BooksPage {
    Q_OBJECT

public:
    EarnedPage(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, QWidget* parent = nullptr);
    ~EarnedPage() override;

    [[nodiscard]] QString name() const override { return tr("Earned"); }
    void enter() override;
    void refresh() override;
    void leave() override;

    [[nodiscard]] EarnedPresenter& presenter() const { return *m_presenter; }
    [[nodiscard]] const FiguresModel& figures() const { return m_figures; }
    [[nodiscard]] PinSheet* pinSheet() const { return m_pin; }
    [[nodiscard]] bool isLocked() const { return m_rooms->currentIndex() == 0; }
    [[nodiscard]] QString beside() const { return m_beside->text(); } ///< work and scrap

private:
    void build();
    void makeKeys();
    void showEarned();

    OwnerPresenter& m_owner;
    std::unique_ptr<EarnedPresenter> m_presenter;
    FiguresModel m_figures;
    QStackedWidget* m_rooms; ///< the PIN, or the figures
    PinSheet* m_pin;
    QWidget* m_room;
    QLabel* m_title;
    FiguresTable* m_table;
    QLabel* m_beside;
    QAction* m_backKey = nullptr;
    QAction* m_onKey = nullptr;
    QAction* m_giveKey = nullptr;
};

} // namespace rw::ui
