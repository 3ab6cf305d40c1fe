// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/presenter/stockroom_presenter.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <optional>

namespace rw::ui {

class LengthEdit;
class MoneyEdit;

/// String comes in: which, how long as printed, what it cost.
class ReceiveStrip final : public QWidget {
    Q_OBJECT

public:
    explicit ReceiveStrip(QWidget* parent = nullptr);

    void start(const std::vector<desk::ShelfString>& strings, const std::optional<StringArticleId>& chosen,
               const Currency& currency);
    /// Shows what cannot be read, with the keyboard on it; nothing then.
    std::optional<StockroomPresenter::Receipt> receipt();
    void showRefusal(const Refusal& why);

    [[nodiscard]] QComboBox* strings() const { return m_string; }
    [[nodiscard]] LengthEdit* length() const { return m_length; }
    [[nodiscard]] MoneyEdit* price() const { return m_price; }
    [[nodiscard]] QLineEdit* tag() const { return m_tag; }
    [[nodiscard]] QLineEdit* batch() const { return m_batch; }

private:
    std::string m_requestKey;
    Sheet* m_sheet;
    QComboBox* m_string;
    QComboBox* m_kind;
    LengthEdit* m_length;
    QLineEdit* m_tag;
    MoneyEdit* m_price;
    MoneyEdit* m_shipping;
    QLineEdit* m_batch;
    Sheet::Line m_stringLine{};
    Sheet::Line m_lengthLine{};
    Sheet::Line m_priceLine{};
    Sheet::Line m_batchLine{};
};

} // namespace rw::ui
