// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"
#include "ui/drawing/course_curve.h"

#include <QWidget>

#include <optional>

namespace rw::ui {

/// A string's stock from today on, drawn, with its order point.
class AheadView final : public QWidget {
    Q_OBJECT

public:
    explicit AheadView(QWidget* parent = nullptr);
    /// Nothing is drawn of a string of which nothing can be told.
    void show(const desk::ShelfString& string);
    [[nodiscard]] bool drawsSomething() const { return m_curve.has_value(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<CourseCurve> m_curve;
};

} // namespace rw::ui
