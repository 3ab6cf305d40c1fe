// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/frame_model.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <optional>

namespace rw::ui {

class HeadMeasureEdit;
class HeadSizeEdit;
class PatternEdit;
class TensionEdit;

/// A frame: what it is called, its pattern, the range its maker marks, what is measured of its head, and what the bench
/// must know.
class FrameSheet final : public QWidget {
    Q_OBJECT

public:
    explicit FrameSheet(QWidget* parent = nullptr);

    void start(const FrameModel& frame, TensionUnit unit); ///< new without an id; `unit` of a bare number
    /// Nothing while something cannot be read, with the keyboard on it.
    std::optional<FrameModel> frame();
    void showRefusal(const Refusal& why);

private:
    void build();
    void showSide();
    [[nodiscard]] QList<Sheet::Line> lines() const;
    [[nodiscard]] Hoop hoop() const;
    [[nodiscard]] Pattern pattern() const;
    [[nodiscard]] BenchNote note() const;

    std::optional<FrameModel> m_frame; ///< as it was
    Sheet* m_sheet;
    QLineEdit* m_name;
    QComboBox* m_sport;
    PatternEdit* m_pattern;
    QComboBox* m_start;
    TensionEdit* m_lowest;
    TensionEdit* m_highest;
    HeadMeasureEdit* m_length;
    HeadMeasureEdit* m_width;
    HeadSizeEdit* m_size;
    HeadMeasureEdit* m_outermostMain;
    HeadMeasureEdit* m_lastCross;
    HeadMeasureEdit* m_wall;
    HeadMeasureEdit* m_mainsSpan;
    HeadMeasureEdit* m_crossesSpan;
    QComboBox* m_throat;
    QComboBox* m_side;
    QLineEdit* m_reason;
    QLineEdit* m_mark;
    QComboBox* m_crossesStart;
    QLineEdit* m_note;
    Sheet::Line m_nameLine{};
    Sheet::Line m_patternLine{};
    Sheet::Line m_markedLine{};
    Sheet::Line m_headLine{};
    Sheet::Line m_finerLine{};
    Sheet::Line m_spanLine{};
    Sheet::Line m_sideLine{};
    Sheet::Line m_markLine{};
    Sheet::Line m_noteLine{};
};

} // namespace rw::ui
