// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "ui/model/list_model.h"

#include <QTimeZone>

namespace rw::ui {

/// What was strung before, newest first. The row's first line is the pair that counts: strung, else asked.
class HistoryModel final : public ListModel<desk::HistoryEntry> {
    Q_OBJECT

public:
    using ListModel::ListModel;
    void setZone(const QTimeZone& zone) { m_zone = zone; }

    [[nodiscard]] QString date(int row) const;
    [[nodiscard]] QString pair(int row) const;  ///< "52/50 lb": as strung, else as asked
    [[nodiscard]] QString what(int row) const;  ///< whose racket, string, method, lengths
    [[nodiscard]] QString facts(int row) const; ///< asked beside strung, lengths, what was lost, machine
    [[nodiscard]] QString note(int row) const;
    [[nodiscard]] QString number(int row) const; ///< of the job, and what it cost: "2119 · £30.00"

protected:
    [[nodiscard]] QVariant show(const desk::HistoryEntry& entry, int role) const override;

private:
    QTimeZone m_zone = QTimeZone::utc();
};

/// "Larkspun 130", "Kestrelline 125 / Larkspun 130".
[[nodiscard]] QString stringNames(const std::vector<StringArticle>& strings);

} // namespace rw::ui
