// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/closed_lot_model.h"

#include <QLabel>
#include <QListView>
#include <QWidget>

#include <optional>

namespace rw::ui {

/// The lots of one string that are gone: used up, thrown away, given back. The one that went last stands first.
class ClosedLotsPage final : public QWidget {
    Q_OBJECT

public:
    explicit ClosedLotsPage(QWidget* parent = nullptr);

    void start(const QString& string);
    /// The lots as they are now; the one that was chosen stays chosen.
    void show(const std::vector<desk::ClosedLot>& lots, const QTimeZone& zone);
    void enter();
    [[nodiscard]] std::optional<LotId> chosen() const;
    [[nodiscard]] QListView* list() const { return m_list; }
    [[nodiscard]] QString title() const { return m_title->text(); }

Q_SIGNALS:
    void moved(); ///< another one is chosen, or none

private:
    ClosedLotModel m_lots;
    QLabel* m_title;
    QLabel* m_empty;
    QListView* m_list;
};

} // namespace rw::ui
