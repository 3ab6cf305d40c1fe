// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pricing/quote.h"
#include "ui/widgets/value_edit.h"

#include <optional>

namespace rw::ui {

/// What is taken off a price: "10 %", or an amount in the shop's currency. Its reason is said elsewhere.
class DiscountEdit final : public ValueEdit {
    Q_OBJECT

public:
    explicit DiscountEdit(Currency currency, QWidget* parent = nullptr);

    void setCurrency(Currency currency) { m_currency = currency; }
    void setValue(const std::optional<Discount>& discount); ///< emits nothing
    [[nodiscard]] Result<Discount> value() const;           ///< Missing when blank
    [[nodiscard]] std::optional<Discount> readable() const;

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;

private:
    Currency m_currency;
};

} // namespace rw::ui
