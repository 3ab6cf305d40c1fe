// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"
#include "ui/model/list_model.h"

#include <QTimeZone>

namespace rw::ui {

/// Lots that are on the shelf no more, one below the other: what each was, how it went and when.
class ClosedLotModel final : public ListModel<desk::ClosedLot> {
    Q_OBJECT

public:
    using ListModel::ListModel;
    void setZone(const QTimeZone& zone) { m_zone = zone; } ///< takes effect with the next rows
    [[nodiscard]] int rowOf(LotId lot) const;              ///< -1 when it is not there

protected:
    [[nodiscard]] QVariant show(const desk::ClosedLot& closed, int role) const override;

private:
    QTimeZone m_zone = QTimeZone::utc();
};

} // namespace rw::ui
