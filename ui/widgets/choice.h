// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>

namespace rw::ui {

/// A line on which one of several things is chosen. Typing its first letters moves to it, the arrow keys go one on; the
/// wheel does nothing unless the keyboard is here, so that scrolling past changes nothing.
class Choice final : public QComboBox {
    Q_OBJECT

public:
    explicit Choice(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
};

} // namespace rw::ui
