// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/history_model.h"

#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/words.h"

#include <QStringList>

namespace rw::ui {

namespace {
QString dateOf(const desk::HistoryEntry& entry, const QTimeZone& zone) {
    return dateText(entry.job.strung ? entry.job.strung->by.at : entry.job.logged, zone);
}

QString pairOf(const desk::HistoryEntry& entry) {
    return tensionPairText(entry.job.strung ? entry.job.strung->tensions : entry.job.asked);
}

QString whatOf(const desk::HistoryEntry& entry) {
    return QStringList{fromUtf8(entry.customer), racketName(entry.frame, entry.mark), stringNames(entry.strings)}.join(
        QStringLiteral(" · "));
}

QString factsOf(const desk::HistoryEntry& entry) {
    QStringList facts{askedAndStrungText(entry.job), methodWord(entry.job.method), cutLengthsText(entry.job)};
    for (const JobPiece& piece : entry.job.pieces) {
        if (const QString lost = lostText(piece); !lost.isEmpty()) {
            facts << lost;
        }
    }
    if (!entry.machine.empty()) {
        facts << fromUtf8(entry.machine);
    }
    return facts.join(QStringLiteral(", "));
}
} // namespace

QString stringNames(const std::vector<StringArticle>& strings) {
    QStringList names;
    for (const auto& string : strings) {
        const QString name = fromUtf8(string.name);
        if (!names.contains(name)) {
            names << name;
        }
    }
    return names.join(QStringLiteral(" / "));
}

QString HistoryModel::date(int row) const { return dateOf(at(row), m_zone); }
QString HistoryModel::pair(int row) const { return pairOf(at(row)); }
QString HistoryModel::what(int row) const { return whatOf(at(row)); }
QString HistoryModel::facts(int row) const { return factsOf(at(row)); }
QString HistoryModel::number(int row) const {
    const Job& job = at(row).job;
    return QStringLiteral("%1 · %2").arg(QString::number(job.number), moneyText(job.total));
}
QString HistoryModel::note(int row) const { return fromUtf8(at(row).job.note); }

QVariant HistoryModel::show(const desk::HistoryEntry& entry, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return QString(dateOf(entry, m_zone) + QStringLiteral(": ") + pairOf(entry));
    case DetailRole:
        return QString(whatOf(entry) + QStringLiteral(". ") + factsOf(entry));
    case AsideRole:
        return stateWithShape(entry.job.state);
    default:
        return {};
    }
}

} // namespace rw::ui
