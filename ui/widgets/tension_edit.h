// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/tension.h"
#include "ui/widgets/value_edit.h"

#include "core/base/result.h"

#include <optional>

namespace rw::ui {

/// A tension with its unit: "52", "52,5 lb", "23.5 kg". A leading sign changes the value that stood there when the
/// line was entered: "-2 lb" on 54 lb is 52 lb.
class TensionEdit final : public ValueEdit {
    Q_OBJECT

public:
    explicit TensionEdit(QWidget* parent = nullptr);

    /// What a bare number is read in.
    void setDefaultUnit(TensionUnit unit);
    void setValue(const std::optional<Tension>& tension); ///< also what a change starts from; emits nothing
    [[nodiscard]] Result<Tension> value() const;          ///< Missing when blank
    /// The value when it can be read.
    [[nodiscard]] std::optional<Tension> readable() const;

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;

private:
    TensionUnit m_unit = TensionUnit::Pound;
    std::optional<Tension> m_old;
};

} // namespace rw::ui
