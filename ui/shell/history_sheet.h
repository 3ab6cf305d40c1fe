// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/history_model.h"
#include "ui/port/desk_runner.h"
#include "ui/presenter/history_presenter.h"

#include <QLabel>
#include <QListView>
#include <QWidget>

#include <memory>

namespace rw::ui {

/// What was strung before, one mark for each job with its two numbers beside it, newest first.
class HistorySheet final : public QWidget {
    Q_OBJECT

public:
    HistorySheet(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);

    void show(const HistoryOf& of);
    [[nodiscard]] const HistoryModel& history() const { return m_history; }
    [[nodiscard]] QString title() const { return m_title->text(); }
    [[nodiscard]] QLabel* empty() const { return m_empty; } ///< why there is nothing to see

Q_SIGNALS:
    void left(); ///< Esc

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void showEntries();

    Shift& m_shift;
    std::unique_ptr<HistoryPresenter> m_presenter;
    HistoryModel m_history;
    QLabel* m_title;
    QLabel* m_empty;
    QListView* m_list;
};

} // namespace rw::ui
