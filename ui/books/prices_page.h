// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pricing/price_list.h"
#include "ui/books/set_up_page.h"
#include "ui/port/desk_runner.h"

#include <memory>
#include <optional>

namespace rw::ui {

class NewListSheet;
class OwnerPresenter;
class PriceLineSheet;
class PricesPresenter;
class Shift;
class StringPriceSheet;
class TaxSheet;

/// "Prices": the lists with the day from which each holds; and when one is opened, its lines.
class PricesPage final : public SetUpPage {
    Q_OBJECT

public:
    PricesPage(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, QWidget* parent = nullptr);
    ~PricesPage() override;

    [[nodiscard]] QString name() const override { return tr("Prices"); }
    void refresh() override;
    void leave() override;
    bool back() override;

    [[nodiscard]] PricesPresenter& presenter() const { return *m_presenter; }
    [[nodiscard]] NewListSheet* newListSheet() const { return m_newList; }
    [[nodiscard]] PriceLineSheet* lineSheet() const { return m_line; }
    [[nodiscard]] bool isListOpen() const; ///< the lines of one list are shown

    void openCurrent(); ///< of the lists: its lines; of the lines: its sheet
    void openNew();     ///< a list; a line
    void openTax();

protected:
    void enableKeys() override;

private:
    void makeKeys();
    void connectPresenter();
    void show();
    void showLists();
    void showLines();
    void takeOff();
    void confirm();

    Shift& m_shift;
    OwnerPresenter& m_owner;
    std::unique_ptr<PricesPresenter> m_presenter;
    NewListSheet* m_newList;
    PriceLineSheet* m_line;
    StringPriceSheet* m_string;
    TaxSheet* m_tax;
    std::optional<PriceList> m_seen; ///< the list as it stood when a sheet was opened
    int m_listRow = 0;               ///< where the keyboard was among the lists
    QAction* m_editKey = nullptr;
    QAction* m_newKey = nullptr;
    QAction* m_taxKey = nullptr;
    QAction* m_offKey = nullptr;
    QAction* m_confirmKey = nullptr;
};

} // namespace rw::ui
