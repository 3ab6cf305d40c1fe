// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/words_model.h"

namespace rw::ui {

QVariant WordsModel::show(const WordsRow& row, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return row.title;
    case Qt::AccessibleTextRole: {
        QStringList words{row.title, row.aside, row.detail};
        words.removeAll(QString());
        return words.join(QStringLiteral(", "));
    }
    case DetailRole:
        return row.detail;
    case AsideRole:
        return row.aside;
    default:
        return {};
    }
}

} // namespace rw::ui
