// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/presenter/stockroom_presenter.h"
#include "ui/stockroom/delivery_row.h"

#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include <optional>
#include <string>
#include <vector>

class QGridLayout;
class QScrollArea;

namespace rw::ui {

class MarginNote;
class MoneyEdit;

/// String comes in: a line for each kind of lot in the parcel, then who sent it and what the sending cost. There is
/// always one blank line more.
class DeliverySheet final : public QWidget {
    Q_OBJECT

public:
    explicit DeliverySheet(QWidget* parent = nullptr);

    void start(const std::vector<desk::ShelfString>& strings, const std::optional<StringArticleId>& chosen,
               const Currency& currency);
    void setSuppliers(const std::vector<std::string>& names); ///< to be completed as they are typed
    /// A list for each line that is not blank.
    void setTags(const std::vector<std::vector<std::string>>& tags);
    /// The lines that are not blank, as far as they go.
    [[nodiscard]] std::vector<desk::DeliveryLine> sketch() const;
    /// Shows what cannot be read, with the keyboard on it; nothing then.
    [[nodiscard]] std::optional<StockroomPresenter::Parcel> parcel();
    void showRefusal(const Refusal& why);

    [[nodiscard]] DeliveryRow& row(std::size_t line) const { return *m_rows[line]; }
    [[nodiscard]] std::size_t rows() const { return m_shown; } ///< in view, with the blank one
    [[nodiscard]] QLineEdit* supplier() const { return m_supplier; }
    [[nodiscard]] MoneyEdit* shipping() const { return m_shipping; }
    [[nodiscard]] QString sum() const { return m_sum->text(); }
    [[nodiscard]] MarginNote* note() const { return m_note; }

Q_SIGNALS:
    void linesChanged(); ///< the tags may be others now

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void buildHeader();
    void buildFoot();
    void showRows(std::size_t count);
    void addRow();
    void rowChanged();
    [[nodiscard]] std::vector<DeliveryRow*> written() const;

    std::string m_requestKey;
    std::vector<desk::ShelfString> m_strings;
    Currency m_currency;
    QScrollArea* m_scroll;
    QWidget* m_paper;
    QGridLayout* m_grid;
    std::vector<DeliveryRow*> m_rows;
    std::size_t m_shown = 0;
    QLineEdit* m_supplier;
    MoneyEdit* m_shipping;
    QLabel* m_sum;
    MarginNote* m_note;
};

} // namespace rw::ui
