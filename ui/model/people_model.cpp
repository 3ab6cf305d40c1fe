// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/people_model.h"

#include "ui/text/format.h"
#include "ui/text/tag_words.h"
#include "ui/text/words.h"

#include <QStringList>

#include <algorithm>

namespace rw::ui {

namespace {
QString contacts(const Customer& customer) {
    QStringList texts;
    for (const auto& contact : customer.contacts) {
        texts << fromUtf8(contact.text);
    }
    return texts.join(QStringLiteral(" · "));
}

QString rackets(const desk::PersonFound& person) {
    QStringList texts;
    for (const auto& racket : person.rackets) {
        texts << racketName(racket.frame.name, racket.racket.mark);
    }
    return texts.join(QStringLiteral(", "));
}
} // namespace

void PeopleModel::setFound(const std::vector<desk::PersonFound>& found, const QString& typed,
                           const std::optional<desk::TaggedJob>& tagged) {
    std::vector<PeopleRow> rows;
    if (tagged && tagged->isInTheShop()) {
        rows.push_back({std::nullopt, typed, tagged});
    }
    for (const auto& person : found) {
        rows.push_back({person, typed});
    }
    if (tagged && !tagged->isInTheShop()) {
        rows.push_back({std::nullopt, typed, tagged});
    }
    if (!typed.isEmpty()) {
        rows.push_back({std::nullopt, typed});
    }
    setRows(std::move(rows));
}

std::optional<int> PeopleModel::taggedRow() const {
    const auto row = std::ranges::find_if(rows(), [](const PeopleRow& each) { return each.tagged.has_value(); });
    return row == rows().end() ? std::nullopt : std::optional(static_cast<int>(row - rows().begin()));
}

QVariant PeopleModel::show(const PeopleRow& row, int role) const {
    if (row.tagged) {
        return role == Qt::DisplayRole ? QVariant(taggedTitle(*row.tagged))
               : role == DetailRole    ? QVariant(taggedDetail(*row.tagged))
                                       : QVariant();
    }
    switch (role) {
    case Qt::DisplayRole:
        return row.person ? fromUtf8(row.person->customer.name) : tr("+ somebody new: %1").arg(row.typed);
    case DetailRole:
        return row.person ? rackets(*row.person) : tr("takes a name; a phone number helps next time");
    case AsideRole:
        return row.person ? contacts(row.person->customer) : QString();
    default:
        return {};
    }
}

} // namespace rw::ui
