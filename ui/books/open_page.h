// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/books_page.h"
#include "ui/model/open_matter_model.h"

#include <QLabel>
#include <QListView>
#include <QStackedWidget>

#include <memory>

namespace rw::ui {

class OpenMattersPresenter;
class PaySheet;
class TellSheet;

/// "Still open": what is strung and not told, not paid, not collected, the oldest first.
class OpenPage final : public BooksPage {
    Q_OBJECT

public:
    OpenPage(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~OpenPage() override;

    [[nodiscard]] QString name() const override { return tr("Still open"); }
    void enter() override;
    void refresh() override;
    bool back() override;
    void leave() override;

    [[nodiscard]] OpenMattersPresenter& presenter() const { return *m_presenter; }
    [[nodiscard]] QListView* list() const { return m_list; }
    [[nodiscard]] PaySheet* paySheet() const { return m_pay; }

    void openTell();
    void openPay();

private:
    void makeKeys();
    void showMatters();
    void showSheet(QWidget* sheet); ///< nothing: none
    [[nodiscard]] bool isSheetOpen() const;
    void enableKeys();
    void confirm();
    [[nodiscard]] const desk::OpenMatter* current() const; ///< null when nothing is open

    Shift& m_shift;
    std::unique_ptr<OpenMattersPresenter> m_presenter;
    OpenMatterModel m_matters;
    QLabel* m_words;
    QListView* m_list;
    QStackedWidget* m_sheets;
    TellSheet* m_tell;
    PaySheet* m_pay;
    QAction* m_tellKey = nullptr;
    QAction* m_payKey = nullptr;
    QAction* m_historyKey = nullptr;
    QAction* m_confirmKey = nullptr;
};

} // namespace rw::ui
