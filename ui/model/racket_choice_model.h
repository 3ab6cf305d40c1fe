// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "ui/model/list_model.h"

#include <QTimeZone>

#include <optional>

namespace rw::ui {

/// One line of the choice of a racket: the person's own, a frame the shop knows, or a frame nobody has heard of.
struct RacketRow {
    std::optional<desk::RacketSummary> own;
    std::optional<FrameModel> known;
    QString typed; ///< the name a new frame would start with; when neither of the others is there
};

class RacketChoiceModel final : public ListModel<RacketRow> {
    Q_OBJECT

public:
    using ListModel::ListModel;
    void setNow(Instant now, const QTimeZone& zone) {
        m_now = now;
        m_zone = zone;
    }

protected:
    [[nodiscard]] QVariant show(const RacketRow& row, int role) const override;

private:
    Instant m_now{};
    QTimeZone m_zone = QTimeZone::utc();
};

} // namespace rw::ui
