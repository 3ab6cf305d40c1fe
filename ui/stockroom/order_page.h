// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/order_drafts.h"
#include "ui/model/figures_model.h"

#include <QLabel>
#include <QWidget>

#include <vector>

namespace rw::ui {

class FiguresTable;

/// What to order: a draft for each supplier, with how many of each string and why. To be read; it orders nothing.
class OrderPage final : public QWidget {
    Q_OBJECT

public:
    explicit OrderPage(QWidget* parent = nullptr);

    /// `known`: the ledger has answered.
    void show(const std::vector<desk::OrderDraft>& drafts, bool known);
    /// Whether what a reel costs may stand there; takes effect at once.
    void setShowsPaid(bool shows);
    void enter(); ///< the keyboard goes to the first line
    [[nodiscard]] bool isEmpty() const { return m_drafts.empty(); }
    [[nodiscard]] FiguresTable* lines() const { return m_table; }
    [[nodiscard]] QString words() const { return m_words->text(); }

private:
    void fill();

    std::vector<desk::OrderDraft> m_drafts;
    bool m_known = false;
    bool m_showsPaid = false;
    FiguresModel m_figures;
    QLabel* m_title;
    FiguresTable* m_table;
    QLabel* m_words;
};

} // namespace rw::ui
