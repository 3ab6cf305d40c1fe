// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/counter/job_list.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include <optional>

namespace rw::ui {

class MoneyEdit;
class RackPresenter;
class Shift;

/// The rack: what waits to be collected, and handing one over: what is paid, how, and who takes it. The same for what
/// went home unpaid: money that comes later, or goes back.
class RackSheet final : public QWidget {
    Q_OBJECT

public:
    RackSheet(RackPresenter& rack, Shift& shift, QWidget* parent = nullptr);

    /// Comes into view; see JobList::begin().
    void enter(const std::optional<CustomerId>& person);

    void enterAt(JobId job); ///< comes into view with this one chosen

    void takeKeyboard() { m_list->takeKeyboard(); }
    [[nodiscard]] QListView* list() const { return m_list->list(); }
    [[nodiscard]] MoneyEdit* paid() const { return m_paid; }
    [[nodiscard]] QComboBox* way() const { return m_way; }
    [[nodiscard]] QLineEdit* takenBy() const { return m_takenBy; }
    [[nodiscard]] bool isOpen() const;
    /// The racket that is chosen; nullptr when none is.
    [[nodiscard]] const desk::JobLine* chosen() const { return m_list->chosenLine(); }

Q_SIGNALS:
    void left();                     ///< Esc: back to taking in
    void said(const QString& words); ///< what there is no line for

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void showLines();
    void showOpened();
    void showPayment();
    void handOver();
    void takePayment();
    void giveBack();
    void act(); ///< Enter, or the button: hands over, takes what is paid, or gives back
    [[nodiscard]] bool isUnpaid() const;
    [[nodiscard]] bool isGivingBack() const; ///< of what is open
    [[nodiscard]] bool surplusMustBeSaid(const Money& payment);
    [[nodiscard]] bool isPaidNow() const; ///< not on account, and not left open
    [[nodiscard]] std::optional<Money> paying() const; ///< nothing while it cannot be read

    RackPresenter& m_rack;
    Shift& m_shift;
    bool m_surplusShown = false; ///< more than is owed was said and may be taken
    JobList* m_list;
    Sheet* m_sheet;
    MoneyEdit* m_paid;
    QComboBox* m_way;
    QLineEdit* m_takenBy;
    QPushButton* m_handOver;
    Sheet::Line m_paidLine{};
    Sheet::Line m_takenLine{};
};

} // namespace rw::ui
