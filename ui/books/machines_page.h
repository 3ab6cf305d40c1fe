// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/set_up_page.h"
#include "ui/port/desk_runner.h"

#include <memory>

namespace rw::ui {

class MachineSheet;
class MachinesPresenter;
class Shift;

/// "Machines": what the shop strings on, and what is retired.
class MachinesPage final : public SetUpPage {
    Q_OBJECT

public:
    MachinesPage(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~MachinesPage() override;

    [[nodiscard]] QString name() const override { return tr("Machines"); }
    void refresh() override;
    void leave() override;

    [[nodiscard]] MachinesPresenter& presenter() const { return *m_presenter; }

    void openNew();
    void openCurrent();

protected:
    void enableKeys() override;

private:
    void showMachines();
    void confirm();

    std::unique_ptr<MachinesPresenter> m_presenter;
    MachineSheet* m_sheet;
    QAction* m_editKey = nullptr;
    QAction* m_newKey = nullptr;
    QAction* m_retireKey = nullptr;
    QAction* m_backKey = nullptr; ///< for what is retired
    QAction* m_confirmKey = nullptr;
};

} // namespace rw::ui
