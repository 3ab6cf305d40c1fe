// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/cut_plan.h"

#include <QWidget>

#include <optional>

namespace rw::ui {

/// The head of the frame, small, as it will lie on the machine. Its accessible description says it in words.
class HeadView final : public QWidget {
    Q_OBJECT

public:
    explicit HeadView(QWidget* parent = nullptr);

    void setPlan(const std::optional<length::CutPlan>& plan);
    [[nodiscard]] QSize sizeHint() const override { return {170, 188}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {120, 140}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<length::CutPlan> m_plan;
};

} // namespace rw::ui
