// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/books_page.h"
#include "ui/port/outside.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include <chrono>
#include <memory>

namespace rw::ui {

class ExportPresenter;
class OwnerPresenter;

/// "As files": everything that the ledger holds as CSV, in a folder that somebody chooses.
class ExportPage final : public BooksPage {
    Q_OBJECT

public:
    ExportPage(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, const Outside& outside,
               QWidget* parent = nullptr);
    ~ExportPage() override;

    [[nodiscard]] QString name() const override { return tr("As files"); }
    void enter() override;
    void refresh() override;
    bool back() override; ///< stops what is under way

    [[nodiscard]] QString words() const { return m_words->text(); }

private:
    void begin();
    void showState();

    FolderChooser& m_folders;
    OwnerPresenter& m_owner;
    std::unique_ptr<ExportPresenter> m_presenter;
    QLabel* m_words;
    QPushButton* m_choose;
    QProgressBar* m_progress;
    QLabel* m_outcome;
    QAction* m_beginKey = nullptr;
};

} // namespace rw::ui
