// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <QAbstractTableModel>
#include <QString>
#include <QTimeZone>

#include <functional>
#include <optional>
#include <vector>

namespace rw::ui {

/// A lot's whole life as a table, oldest line first, so that a correction can point at an earlier line.
class LotStoryModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, When, What, Change, Left, Who, Why };
    using NameOf = std::function<QString(StaffId)>;

    using QAbstractTableModel::QAbstractTableModel;

    void setLife(const std::optional<desk::LotLife>& life, const QTimeZone& zone, const NameOf& nameOf);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<QStringList> m_rows;
};

} // namespace rw::ui
