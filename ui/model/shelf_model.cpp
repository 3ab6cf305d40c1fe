// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/shelf_model.h"

#include "ui/text/ahead_words.h"
#include "ui/text/format.h"
#include "ui/text/stock_words.h"
#include "ui/text/stockroom_words.h"
#include "ui/text/words.h"

#include <QStringList>

#include <algorithm>

namespace rw::ui {

QString articleTitle(const StringArticle& article) {
    return fromUtf8(article.code) + QLatin1Char(' ') + stringName(article);
}

QString boardTitle(const desk::ShelfString& string) {
    const QString title = articleTitle(string.article);
    return string.owner.empty() ? title : keptBoardText(fromUtf8(string.owner), title);
}

void ShelfModel::setShelf(std::vector<desk::ShelfString> shelf) {
    beginResetModel();
    m_shelf = std::move(shelf);
    m_columns = 1;
    for (const auto& string : m_shelf) {
        m_columns = std::max(m_columns, 1 + static_cast<int>(string.lots.size()));
    }
    endResetModel();
}

const desk::ShelfLot* ShelfModel::lotAt(const QModelIndex& index) const {
    if (!index.isValid() || index.column() == 0) {
        return nullptr;
    }
    const auto& lots = stringAt(index.row()).lots;
    const auto lot = static_cast<std::size_t>(index.column() - 1);
    return lot < lots.size() ? &lots[lot] : nullptr;
}

QModelIndex ShelfModel::indexOf(StringArticleId string) const {
    for (int row = 0; row < rowCount(); ++row) {
        if (stringAt(row).article.id == string) {
            return index(row, 0);
        }
    }
    return {};
}

QModelIndex ShelfModel::indexOf(LotId lot) const {
    for (int row = 0; row < rowCount(); ++row) {
        for (int column = 1; column < columnCount(); ++column) {
            const auto* there = lotAt(index(row, column));
            if (there != nullptr && there->lot.id == lot) {
                return index(row, column);
            }
        }
    }
    return {};
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_shelf.size());
}

int ShelfModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_columns; }

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)) {
        return {};
    }
    const auto& string = stringAt(index.row());
    if (index.column() == 0) {
        QStringList facts{boardTitle(string), holdingText(string.holding), usableText(string)};
        if (string.runningShort()) {
            facts << runningShortText(string);
        }
        if (string.ahead && !boardAheadText(*string.ahead).isEmpty()) {
            facts << boardAheadText(*string.ahead);
        }
        return facts.join(QStringLiteral("; "));
    }
    const auto* lot = lotAt(index);
    if (lot == nullptr) {
        return {};
    }
    return QStringList{fromUtf8(lot->lot.tag), lotThereText(*lot).replace(QLatin1Char('\n'), QStringLiteral(": "))}
        .join(QStringLiteral(": "));
}

Qt::ItemFlags ShelfModel::flags(const QModelIndex& index) const {
    if (!index.isValid() || (index.column() > 0 && lotAt(index) == nullptr)) {
        return Qt::NoItemFlags;
    }
    return Qt::ItemIsSelectable | Qt::ItemIsEnabled;
}

} // namespace rw::ui
