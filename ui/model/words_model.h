// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/list_model.h"

#include <QString>
#include <QStringList>

namespace rw::ui {

/// A row in words alone.
struct WordsRow {
    QString title;
    QString detail = {};
    QString aside = {};
    bool operator==(const WordsRow&) const = default;
};

/// Rows that somebody else has put into words.
class WordsModel final : public ListModel<WordsRow> {
    Q_OBJECT

public:
    using ListModel::ListModel;

protected:
    [[nodiscard]] QVariant show(const WordsRow& row, int role) const override;
};

} // namespace rw::ui
