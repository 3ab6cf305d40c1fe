// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/frame_model.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

class QKeyEvent;

namespace rw::ui {

class PatternEdit;

/// A frame nobody has heard of: a name, a sport, a pattern, and the mark of this one. Enter adds.
class NewFrameForm final : public QWidget {
    Q_OBJECT

public:
    explicit NewFrameForm(QWidget* parent = nullptr);

    void start(const QString& name, const QString& mark);
    [[nodiscard]] QLineEdit* name() const { return m_name; }
    [[nodiscard]] QComboBox* sport() const { return m_sport; }
    [[nodiscard]] PatternEdit* pattern() const { return m_pattern; }
    [[nodiscard]] QLineEdit* mark() const { return m_mark; }

Q_SIGNALS:
    void wanted(const FrameModel& frame, const QString& mark); ///< only with a pattern that can be read
    void incomplete();                                         ///< Enter, and something cannot be read
    void dropped();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLineEdit* m_name;
    QComboBox* m_sport;
    PatternEdit* m_pattern;
    QLineEdit* m_mark;
};

} // namespace rw::ui
