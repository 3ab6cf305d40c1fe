// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"

#include <QLineEdit>

#include <optional>

namespace rw::ui {

/// A line in which one value of one type is typed. Derived editors read it; forms never do. What is typed stays as it
/// is until the line is left; then a value that could be read is written out in full.
class ValueEdit : public QLineEdit {
    Q_OBJECT

public:
    /// Why what stands there is no value; nothing when it is one, or when it is blank and may be.
    [[nodiscard]] std::optional<Refusal> problem() const;
    [[nodiscard]] bool isBlank() const { return text().trimmed().isEmpty(); }
    void setMayBeBlank(bool mayBe) { m_mayBeBlank = mayBe; }

Q_SIGNALS:
    void valueChanged(); ///< somebody typed; the value may have changed
    void left();         ///< the line was left, or asked to show what is wrong with it

protected:
    explicit ValueEdit(QWidget* parent);

    /// Why the text, which is not blank, cannot be read.
    [[nodiscard]] virtual std::optional<Refusal> problemWith() const = 0;
    [[nodiscard]] virtual Refusal missing() const = 0;
    /// Writes a readable value out in full.
    virtual void writeOut() = 0;

    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    bool m_mayBeBlank = false;
};

} // namespace rw::ui
