// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/job_line_model.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QWidget>

namespace rw::ui {

class MoneyEdit;
class RackPresenter;
class Shift;

/// The rack: what waits to be collected, and handing one over: what is paid, how, and who takes it.
class RackSheet final : public QWidget {
    Q_OBJECT

public:
    RackSheet(RackPresenter& rack, Shift& shift, QWidget* parent = nullptr);

    /// Comes into view; the first racket of `person` is the current one where there is one.
    void enter(const QString& person);

    [[nodiscard]] QListView* list() const { return m_list; }
    [[nodiscard]] MoneyEdit* paid() const { return m_paid; }
    [[nodiscard]] QComboBox* way() const { return m_way; }
    [[nodiscard]] QLineEdit* takenBy() const { return m_takenBy; }
    [[nodiscard]] bool isOpen() const;
    [[nodiscard]] const desk::JobLine* current() const; ///< the line the keyboard is at; null on an empty rack

Q_SIGNALS:
    void left(); ///< Esc: back to taking in

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void showLines();
    void showOpened();
    void openCurrent();
    void handOver();

    RackPresenter& m_rack;
    Shift& m_shift;
    JobLineModel m_lines;
    QString m_person;
    QLabel* m_title;
    QLabel* m_empty;
    QListView* m_list;
    Sheet* m_sheet;
    MoneyEdit* m_paid;
    QComboBox* m_way;
    QLineEdit* m_takenBy;
    QPushButton* m_handOver;
    Sheet::Line m_paidLine{};
    Sheet::Line m_takenLine{};
};

} // namespace rw::ui
