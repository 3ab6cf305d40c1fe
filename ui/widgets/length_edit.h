// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/units/length.h"
#include "ui/widgets/value_edit.h"

#include <optional>

namespace rw::ui {

/// A length of string, never negative: "11.2 m", "11,2", "1120 cm", "40 ft". A bare number is metres.
class LengthEdit final : public ValueEdit {
    Q_OBJECT

public:
    explicit LengthEdit(QWidget* parent = nullptr);

    void setMayBeZero(bool mayBe) { m_mayBeZero = mayBe; }
    void setValue(const std::optional<Length>& length); ///< emits nothing
    [[nodiscard]] Result<Length> value() const;         ///< Missing when blank, OutOfRange when not positive
    [[nodiscard]] std::optional<Length> readable() const;

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;

private:
    bool m_mayBeZero = false;
};

} // namespace rw::ui
