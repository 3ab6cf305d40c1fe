// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"
#include "ui/drawing/lot_curve.h"
#include "ui/model/lot_story_model.h"

#include <QLabel>
#include <QTableView>
#include <QWidget>

#include <optional>

namespace rw::ui {

class Shift;

/// A lot's length over its life, drawn.
class LotCurveView final : public QWidget {
    Q_OBJECT

public:
    explicit LotCurveView(QWidget* parent = nullptr);
    void show(LotCurve curve);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<LotCurve> m_curve;
};

/// A lot's whole life on one page: what it is, the curve of its length, and every movement with its job, its person
/// and its reason.
class LifePage final : public QWidget {
    Q_OBJECT

public:
    explicit LifePage(Shift& shift, QWidget* parent = nullptr);

    void show(const std::optional<desk::LotLife>& life);
    /// Whether what was paid for a lot may stand there; takes effect at once.
    void setShowsPaid(bool shows);
    void enter(); ///< the keyboard goes to the newest line
    [[nodiscard]] QTableView* lines() const { return m_lines; }
    [[nodiscard]] QString facts() const { return m_facts->text(); }
    /// The life in words, for its owner; "" while there is none.
    [[nodiscard]] QString statement() const { return m_statement; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Shift& m_shift;
    bool m_showsPaid = false;
    std::optional<desk::LotLife> m_life;
    LotStoryModel m_story;
    QString m_statement;
    QLabel* m_title;
    QLabel* m_facts;
    QLabel* m_sum;
    LotCurveView* m_curve;
    QTableView* m_lines;
};

} // namespace rw::ui
