// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/money/money.h"
#include "ui/widgets/value_edit.h"

#include <optional>

namespace rw::ui {

/// An amount in the shop's currency, never negative: "14", "14,50", "£14.50".
class MoneyEdit final : public ValueEdit {
    Q_OBJECT

public:
    explicit MoneyEdit(Currency currency, QWidget* parent = nullptr);

    void setCurrency(Currency currency);
    [[nodiscard]] Currency currency() const { return m_currency; }
    void setValue(const std::optional<Money>& money); ///< emits nothing
    [[nodiscard]] Result<Money> value() const;        ///< Missing when blank, OutOfRange when negative
    [[nodiscard]] std::optional<Money> readable() const;

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;

private:
    Currency m_currency;
};

} // namespace rw::ui
