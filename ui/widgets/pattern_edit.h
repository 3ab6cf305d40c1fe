// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/frames/pattern.h"
#include "ui/widgets/value_edit.h"

namespace rw::ui {

/// How many mains and crosses a frame has: "16x19", "16 19".
class PatternEdit final : public ValueEdit {
    Q_OBJECT

public:
    explicit PatternEdit(QWidget* parent = nullptr);

    [[nodiscard]] Result<Pattern> value() const; ///< Missing when blank

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;
};

} // namespace rw::ui
