// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "ui/widgets/value_edit.h"

#include <cstdint>
#include <optional>

namespace rw::ui {

/// What a metre of string weighs, in grams: "1.65", "1,65 g/m".
class WeightEdit final : public ValueEdit {
    Q_OBJECT

public:
    explicit WeightEdit(QWidget* parent = nullptr);

    void setValue(const std::optional<std::int64_t>& milligramsPerMetre); ///< emits nothing
    [[nodiscard]] std::optional<std::int64_t> readable() const;           ///< milligrams a metre

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;

private:
    [[nodiscard]] Result<std::int64_t> milligramsPerMetre() const; ///< Unreadable, TooFine below a milligram
};

} // namespace rw::ui
