// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/movement.h"
#include "ui/model/list_model.h"

#include <QTimeZone>

namespace rw::ui {

struct LifeRow {
    Movement movement;
    std::int64_t jobNumber = 0; ///< 0 where no job stands behind it
    QString who;
};

/// The life of a lot, newest line first.
class LotLifeModel final : public ListModel<LifeRow> {
    Q_OBJECT

public:
    using ListModel::ListModel;
    void setZone(const QTimeZone& zone) { m_zone = zone; }

protected:
    [[nodiscard]] QVariant show(const LifeRow& row, int role) const override;

private:
    QTimeZone m_zone = QTimeZone::utc();
};

} // namespace rw::ui
