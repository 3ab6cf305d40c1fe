// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/frame_needs.h"
#include "ui/drawing/need_curve.h"
#include "ui/model/figures_model.h"

#include <QLabel>
#include <QTimeZone>
#include <QWidget>

#include <optional>

namespace rw::ui {

class FiguresTable;
class HeadView;

class NeedCurveView final : public QWidget {
    Q_OBJECT

public:
    explicit NeedCurveView(QWidget* parent = nullptr);
    void show(std::optional<NeedCurve> curve);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<NeedCurve> m_curve;
};

/// A frame with its head, its measurements, and every cut that the shop has made for it: one part of the job in view,
/// with what was learned from cut to cut.
class FrameNeedsSheet final : public QWidget {
    Q_OBJECT

public:
    explicit FrameNeedsSheet(QWidget* parent = nullptr);

    /// Shows the frame; the part in view stays, while there is one like it.
    void show(const desk::FrameNeeds& needs, const QTimeZone& zone);
    void turn(int by); ///< to another part of the job
    [[nodiscard]] bool hasOther() const { return m_needs && m_needs->stories.size() > 1; }

    [[nodiscard]] QString title() const { return m_title->text(); }
    [[nodiscard]] QString facts() const { return m_facts->text(); }
    [[nodiscard]] QString learned() const { return m_learned->text(); }
    [[nodiscard]] const FiguresModel& figures() const { return m_figures; }

private:
    void showStory();

    std::optional<desk::FrameNeeds> m_needs;
    std::optional<desk::NeedGroup> m_group; ///< in view
    std::size_t m_story = 0;
    QTimeZone m_zone = QTimeZone::utc();
    FiguresModel m_figures;
    HeadView* m_head;
    QLabel* m_title;
    QLabel* m_facts;
    QLabel* m_learned;
    QLabel* m_legend;
    NeedCurveView* m_curve;
    FiguresTable* m_table;
};

} // namespace rw::ui
