// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/tension.h"
#include "ui/counter/job_list.h"
#include "ui/widgets/sheet.h"

#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include <optional>

namespace rw::ui {

class Shift;
class TensionEdit;
class ToBeStrungPresenter;

/// What is in the shop and not strung yet. W lets a job wait and asks what for, G goes on with it, X withdraws it after
/// asking; T changes the agreed tensions, A keeps the customer's yes to a pull above the marked maximum.
class ToBeStrungSheet final : public QWidget {
    Q_OBJECT

public:
    ToBeStrungSheet(ToBeStrungPresenter& jobs, Shift& shift, QWidget* parent = nullptr);

    /// Comes into view; see JobList::begin().
    void enter(const std::optional<CustomerId>& person);

    void enterAt(JobId job); ///< comes into view with this one chosen

    void takeKeyboard() { m_list->takeKeyboard(); }

    /// The job that is chosen; nullptr when none is.
    [[nodiscard]] const desk::JobLine* chosen() const { return m_list->chosenLine(); }
    [[nodiscard]] QListView* list() const { return m_list->list(); }
    [[nodiscard]] QLineEdit* whatFor() const { return m_whatFor; }
    [[nodiscard]] QPushButton* withdrawButton() const { return m_withdraw; }
    [[nodiscard]] QLineEdit* agreedBy() const { return m_agreedBy; }
    [[nodiscard]] TensionEdit* mains() const { return m_mains; }
    [[nodiscard]] TensionEdit* crosses() const { return m_crosses; }
    [[nodiscard]] MarginNote* tensionNote() const { return m_tensionLine.note; }

Q_SIGNALS:
    void left();                     ///< Esc: back to taking in
    void said(const QString& words); ///< what there is no line for beside a question

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Asking { Nothing, WhatFor, Withdraw, Agreed, Tensions };
    void build();
    void ask(Asking asking);
    void askWhatFor();
    void askWithdraw();
    void askAgreed();
    void askTensions();
    void act(int key);
    void answer(); ///< Enter, while something is asked
    void changeTensions();
    void showTheirs(const Job& job);
    void showRefusal(const Refusal& why);
    void showLines();
    void backToTheList();

    ToBeStrungPresenter& m_jobs;
    Shift& m_shift;
    JobList* m_list;
    Sheet* m_sheet;
    QLineEdit* m_whatFor;
    QPushButton* m_withdraw;
    QLineEdit* m_agreedBy;
    TensionEdit* m_mains;
    TensionEdit* m_crosses;
    Sheet::Line m_whatForLine{};
    Sheet::Line m_withdrawLine{};
    Sheet::Line m_agreedLine{};
    Sheet::Line m_tensionLine{};
    std::optional<TensionPair> m_seen; ///< the tensions as they were shown when somebody began to change them
    Asking m_asking = Asking::Nothing;
};

} // namespace rw::ui
