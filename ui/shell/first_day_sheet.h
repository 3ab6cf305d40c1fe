// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/new_shop.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

namespace rw::ui {

class MoneyEdit;
class ShellPresenter;
class Shift;

/// An empty ledger's first page: who works here, the machine, what the labour costs. Then the stations open.
class FirstDaySheet final : public QWidget {
    Q_OBJECT

public:
    FirstDaySheet(ShellPresenter& shell, Shift& shift, QWidget* parent = nullptr);

    void enter();
    [[nodiscard]] QLineEdit* shopName() const { return m_shopName; }
    [[nodiscard]] QLineEdit* person() const { return m_person; }
    [[nodiscard]] QLineEdit* labourLine() const;
    [[nodiscard]] QComboBox* currency() const { return m_currency; }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void useCurrency(); ///< what is typed keeps its number
    void open();
    void goOn(); ///< Enter: to the next line, and from the last one the shop opens
    void clearProblems();

    ShellPresenter& m_shell;
    Shift& m_shift;
    Sheet* m_sheet;
    QLineEdit* m_shopName;
    QLineEdit* m_person;
    QLineEdit* m_machine;
    QComboBox* m_unit;
    QComboBox* m_step;
    QComboBox* m_currency;
    MoneyEdit* m_labour;
    MoneyEdit* m_ownString;
    MoneyEdit* m_rush;
    QPushButton* m_open;
    Sheet::Line m_personLine{};
    Sheet::Line m_machineLine{};
    Sheet::Line m_labourLine{};
    Sheet::Line m_ownLine{};
    Sheet::Line m_rushLine{};
    Sheet::Line m_openLine{};
};

} // namespace rw::ui
