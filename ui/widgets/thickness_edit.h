// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "ui/widgets/value_edit.h"

#include <optional>

namespace rw::ui {

/// A string's thickness in millimetres: "1.25", "1,25 mm".
class ThicknessEdit final : public ValueEdit {
    Q_OBJECT

public:
    explicit ThicknessEdit(QWidget* parent = nullptr);

    void setValue(int micrometres);                ///< emits nothing
    [[nodiscard]] Result<int> micrometres() const; ///< Missing when blank, OutOfRange outside 0.4 to 2 mm

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;
};

} // namespace rw::ui
