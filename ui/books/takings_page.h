// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/books.h"
#include "ui/books/books_page.h"
#include "ui/model/figures_model.h"

#include <QLabel>

#include <memory>
#include <optional>

namespace rw::ui {

class FiguresTable;
class TakingsPresenter;

/// "Takings": what came in on a day and in its month, side by side, by way of payment.
class TakingsPage final : public BooksPage {
    Q_OBJECT

public:
    TakingsPage(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~TakingsPage() override;

    [[nodiscard]] QString name() const override { return tr("Takings"); }
    void enter() override;
    void refresh() override;
    void leave() override;

    [[nodiscard]] TakingsPresenter& presenter() const { return *m_presenter; }
    [[nodiscard]] const FiguresModel& monthFigures() const { return m_month.figures; }
    [[nodiscard]] QString dayTitle() const { return m_day.title->text(); }

private:
    /// One of the two accounts.
    struct Account {
        QLabel* title = nullptr;
        FiguresTable* table = nullptr;
        FiguresModel figures{};
    };
    void makeKeys();
    void build(Account& account, const QString& name);
    void showTakings();
    static void show(Account& account, const std::optional<desk::Takings>& takings, const QString& title);

    std::unique_ptr<TakingsPresenter> m_presenter;
    Account m_day;
    Account m_month;
    QAction* m_onKey = nullptr;
    QAction* m_monthOnKey = nullptr;
};

} // namespace rw::ui
