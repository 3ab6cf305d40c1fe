// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "ui/widgets/value_edit.h"

#include <optional>

namespace rw::ui {

/// How many: a whole number from 1 on.
class CountEdit final : public ValueEdit {
    Q_OBJECT

public:
    explicit CountEdit(int most, QWidget* parent = nullptr);

    void setValue(int count);                ///< emits nothing
    [[nodiscard]] Result<int> value() const; ///< Missing when blank, Unreadable, OutOfRange outside 1 to `most`
    [[nodiscard]] std::optional<int> readable() const;

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;

private:
    int m_most;
};

} // namespace rw::ui
