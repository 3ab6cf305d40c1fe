// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/counter/job_list.h"
#include "ui/widgets/sheet.h"

#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

namespace rw::ui {

class Shift;
class ToBeStrungPresenter;

/// What is in the shop and not strung yet. W lets a job wait and asks what for, G goes on with it, X withdraws it after
/// asking.
class ToBeStrungSheet final : public QWidget {
    Q_OBJECT

public:
    ToBeStrungSheet(ToBeStrungPresenter& jobs, Shift& shift, QWidget* parent = nullptr);

    /// Comes into view; see JobList::begin().
    void enter(const std::optional<CustomerId>& person);

    /// The job that is chosen; nullptr when none is.
    [[nodiscard]] const desk::JobLine* chosen() const { return m_list->chosenLine(); }
    [[nodiscard]] QListView* list() const { return m_list->list(); }
    [[nodiscard]] QLineEdit* whatFor() const { return m_whatFor; }
    [[nodiscard]] QPushButton* withdrawButton() const { return m_withdraw; }

Q_SIGNALS:
    void left();                     ///< Esc: back to taking in
    void said(const QString& words); ///< what there is no line for beside a question

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Asking { Nothing, WhatFor, Withdraw };
    void ask(Asking asking);
    void act(int key);
    void showLines();
    void backToTheList();

    ToBeStrungPresenter& m_jobs;
    Shift& m_shift;
    JobList* m_list;
    Sheet* m_sheet;
    QLineEdit* m_whatFor;
    QPushButton* m_withdraw;
    Sheet::Line m_whatForLine{};
    Sheet::Line m_withdrawLine{};
    Asking m_asking = Asking::Nothing;
};

} // namespace rw::ui
