// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"

#include <QTimeZone>
#include <QWidget>

#include <optional>

namespace rw::ui {

/// The job card on screen, as large as there is room, to be read from a step away.
class CardView final : public QWidget {
    Q_OBJECT

public:
    explicit CardView(QWidget* parent = nullptr);

    /// Without a card, `instead` says what to do next.
    void show(const std::optional<desk::JobCard>& card, const QTimeZone& zone, const QString& instead);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<desk::JobCard> m_card;
    QTimeZone m_zone = QTimeZone::utc();
    QString m_instead;
};

} // namespace rw::ui
