// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake.h"

#include <QLabel>
#include <QPushButton>
#include <QTimeZone>
#include <QWidget>

#include <optional>

namespace rw::ui {

class HeadView;

/// What an intake comes to, across the foot of the sheet: the head, the cut plan, the price, the promise.
class OutcomeStrip final : public QWidget {
    Q_OBJECT

public:
    explicit OutcomeStrip(QWidget* parent = nullptr);

    void show(const desk::IntakePreview& preview, Instant now, const QTimeZone& zone);
    /// Nothing to show yet: what is still needed, or why there is no plan.
    void showNothing(const QString& why);
    void setStillNeeded(const QString& words);
    /// The numbers belong to what was typed before the last change.
    void setThinking(bool thinking);

    /// Across the foot, why the plan cuts as much as it does.
    void setWhyShown(bool shown);
    [[nodiscard]] bool isWhyShown() const { return m_whyShown; }

    [[nodiscard]] QPushButton* logButton() const { return m_log; }
    [[nodiscard]] QString planText() const { return m_plan->text(); }
    [[nodiscard]] QLabel* reasons() const { return m_reasons; }
    [[nodiscard]] QString priceText() const { return m_price->text(); }
    [[nodiscard]] QString promiseWords() const { return m_promise->text(); }
    [[nodiscard]] QString needed() const { return m_needed->text(); }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitReasons();

    bool m_whyShown = false;
    HeadView* m_head;
    QLabel* m_plan;
    QLabel* m_why;
    QLabel* m_reasons;
    QLabel* m_price;
    QLabel* m_charges;
    QLabel* m_promise;
    QLabel* m_needed;
    QPushButton* m_log;
};

} // namespace rw::ui
