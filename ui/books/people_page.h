// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/set_up_page.h"
#include "ui/port/desk_runner.h"

#include <memory>

namespace rw::ui {

class PersonSheet;
class Shift;
class StaffPresenter;

/// "People": who works here, who of them strings, when, and who has left.
class PeoplePage final : public SetUpPage {
    Q_OBJECT

public:
    PeoplePage(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~PeoplePage() override;

    [[nodiscard]] QString name() const override { return tr("People"); }
    void refresh() override;
    void leave() override;

    [[nodiscard]] StaffPresenter& presenter() const { return *m_presenter; }
    [[nodiscard]] PersonSheet* personSheet() const { return m_sheet; }

    void openNew();
    void openCurrent();

protected:
    void enableKeys() override;

private:
    void showStaff();
    void confirm();

    std::unique_ptr<StaffPresenter> m_presenter;
    PersonSheet* m_sheet;
    QAction* m_editKey = nullptr;
    QAction* m_newKey = nullptr;
    QAction* m_retireKey = nullptr;
    QAction* m_backKey = nullptr; ///< for who has left
    QAction* m_confirmKey = nullptr;
};

} // namespace rw::ui
