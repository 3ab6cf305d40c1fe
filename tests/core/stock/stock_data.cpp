// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/stock/stock_data.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cmath>
#include <stdexcept>

namespace rw::stock::test {

namespace {
QJsonObject file(const char* name) {
    QFile file(QStringLiteral(STOCK_TEST_DATA "/%1").arg(QLatin1String(name)));
    if (!file.open(QIODevice::ReadOnly)) {
        throw std::runtime_error(std::string("no test data: ") + name);
    }
    return QJsonDocument::fromJson(file.readAll()).object();
}

std::vector<double> numbers(const QJsonValue& list) {
    std::vector<double> values;
    for (const QJsonValueRef value : list.toArray()) {
        values.push_back(value.toDouble());
    }
    return values;
}
} // namespace

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }

Length metres(double value) { return mm(std::llround(value * 1000)); }

std::vector<Length> metres(const std::vector<double>& each) {
    std::vector<Length> lengths;
    for (const double value : each) {
        lengths.push_back(metres(value));
    }
    return lengths;
}

PieceMix mixedPieces() {
    const QJsonObject shares = file("piece-lengths-mixed.json")[QLatin1String("shares")].toObject();
    std::vector<PieceMix::Share> all;
    for (auto share = shares.begin(); share != shares.end(); ++share) {
        all.push_back({metres(share.key().toDouble()), share->toDouble()});
    }
    return PieceMix::of(std::move(all));
}

const RemnantValue& mixedValue() {
    static const RemnantValue kValue(mixedPieces(), mm(5'000));
    return kValue;
}

std::vector<double> workedValues() { return numbers(file("remnant-values-mixed.json")[QLatin1String("values")]); }

std::vector<ExactCase> exactCases() {
    std::vector<ExactCase> cases;
    for (const QJsonValueRef each : file("remnant-exact-cases.json")[QLatin1String("cases")].toArray()) {
        const QJsonObject one = each.toObject();
        cases.push_back({numbers(one[QLatin1String("stocks")]), numbers(one[QLatin1String("pieces")]),
                         one[QLatin1String("delta_W_opt")].toDouble(),
                         one[QLatin1String("delta_W_greedy")].toDouble()});
    }
    return cases;
}

std::vector<ScrapCase> scrapCases(const std::string& set) {
    std::vector<ScrapCase> cases;
    const QJsonObject sets = file("cut-instances.json")[QLatin1String("sets")].toObject();
    for (const QJsonValueRef each : sets[QString::fromStdString(set)].toArray()) {
        const QJsonObject one = each.toObject();
        cases.push_back({numbers(one[QLatin1String("stocks")]), numbers(one[QLatin1String("pieces")]),
                         one[QLatin1String("min_usable")].toDouble(), one[QLatin1String("optimum")].toDouble()});
    }
    return cases;
}

} // namespace rw::stock::test
