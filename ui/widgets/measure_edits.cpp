// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/measure_edits.h"

#include "core/units/decimal.h"

#include <QLocale>

#include <cmath>

namespace rw::ui {

namespace {
constexpr double kMillimetresInInch = 25.4;      // exact, NIST SP 811
constexpr double kSquareCmInSquareInch = 6.4516; // 2.54 squared
constexpr double kSmallestHeadCm2 = 200;

/// A number without a sign, and what stands behind it.
struct Measure {
    double number;
    std::string unit;
};
Result<Measure> measureIn(const std::string& what, const std::string& typed) {
    const auto decimal = parseDecimal(what, typed);
    if (!decimal) {
        return tl::unexpected<Refusal>(decimal.error());
    }
    if (decimal->sign != Decimal::Sign::None) {
        return refuse(Code::Unreadable, {{"what", what}, {"text", typed}});
    }
    return Measure{static_cast<double>(decimal->scaled) / std::pow(10.0, decimal->places), std::string(decimal->rest)};
}

Result<int> hundredths(const std::string& what, const std::string& typed, std::string_view unit) {
    const auto decimal = parseDecimal(what, typed);
    if (!decimal) {
        return tl::unexpected<Refusal>(decimal.error());
    }
    if (decimal->sign != Decimal::Sign::None || (!decimal->rest.empty() && decimal->rest != unit)) {
        return refuse(Code::Unreadable, {{"what", what}, {"text", typed}});
    }
    const auto scaled = scaledTo(2, *decimal, what, typed);
    if (!scaled) {
        return tl::unexpected<Refusal>(scaled.error());
    }
    constexpr std::int64_t kMost = 10'000;
    if (*scaled > kMost) {
        return refuse(Code::OutOfRange,
                      {{"what", what}, {"text", typed}, {"lowest", std::string("0")}, {"highest", std::string("100")}});
    }
    return static_cast<int>(*scaled);
}

Result<int> readPercent(const std::string& typed) { return hundredths("tax", typed, "%"); }
Result<int> readStep(const std::string& typed) { return hundredths("step", typed, ""); }

Result<double> readMeasure(const std::string& typed) {
    const std::string what = "measure";
    const auto measure = measureIn(what, typed);
    if (!measure) {
        return tl::unexpected<Refusal>(measure.error());
    }
    const auto& [number, unit] = *measure;
    if (unit.empty() || unit == "mm") {
        return number;
    }
    if (unit == "cm") {
        return number * 10;
    }
    if (unit == "in" || unit == "\"") {
        return number * kMillimetresInInch;
    }
    return refuse(Code::Unreadable, {{"what", what}, {"text", typed}});
}

Result<double> readSize(const std::string& typed) {
    const std::string what = "head size";
    const auto measure = measureIn(what, typed);
    if (!measure) {
        return tl::unexpected<Refusal>(measure.error());
    }
    const auto& [number, unit] = *measure;
    if (unit == "in²" || unit == "in2" || unit == "sq in" || (unit.empty() && number < kSmallestHeadCm2)) {
        return number * kSquareCmInSquareInch;
    }
    if (unit.empty() || unit == "cm²" || unit == "cm2") {
        return number;
    }
    return refuse(Code::Unreadable, {{"what", what}, {"text", typed}});
}

/// What stands in a line is read again, and no group separator can be.
QString numberText(double value, int decimals) {
    QLocale locale;
    locale.setNumberOptions(locale.numberOptions() | QLocale::OmitGroupSeparator);
    QString text = locale.toString(value, 'f', decimals);
    while (decimals > 0 && text.endsWith(QLatin1Char('0'))) {
        text.chop(1);
    }
    return text.endsWith(locale.decimalPoint()) ? text.chopped(locale.decimalPoint().size()) : text;
}

QString writePercent(const int& rate) { return numberText(rate / 100.0, 2) + QStringLiteral(" %"); }
QString writeStep(const int& step) { return numberText(step / 100.0, 2); }
QString writeMeasure(const double& millimetres) { return numberText(millimetres, 2) + QStringLiteral(" mm"); }
QString writeSize(const double& squareCm) { return numberText(squareCm, 2) + QStringLiteral(" cm²"); }
} // namespace

PercentEdit::PercentEdit(QWidget* parent)
    : ParsedEdit("tax", readPercent, writePercent, parent) {
    setPlaceholderText(tr("tax in %"));
}

HeadMeasureEdit::HeadMeasureEdit(QWidget* parent)
    : ParsedEdit("measure", readMeasure, writeMeasure, parent) {
    setPlaceholderText(tr("mm"));
    setMayBeBlank(true);
}

HeadSizeEdit::HeadSizeEdit(QWidget* parent)
    : ParsedEdit("head size", readSize, writeSize, parent) {
    setPlaceholderText(tr("cm²"));
    setMayBeBlank(true);
}

StepEdit::StepEdit(QWidget* parent)
    : ParsedEdit("step", readStep, writeStep, parent) {}

} // namespace rw::ui
