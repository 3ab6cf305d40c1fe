// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/parsed_edit.h"

namespace rw::ui {

/// A rate of tax in hundredths of a percent: "20", "7,7 %". 0 to 100 %.
class PercentEdit final : public ParsedEdit<int> {
    Q_OBJECT

public:
    explicit PercentEdit(QWidget* parent = nullptr);
};

/// A measure of a head in millimetres: "245", "245.5 mm", "24,5 cm", "9 5/8 in" is not read, "9.6 in" is.
class HeadMeasureEdit final : public ParsedEdit<double> {
    Q_OBJECT

public:
    explicit HeadMeasureEdit(QWidget* parent = nullptr);
};

/// The size of a head in square centimetres: "632", "632 cm²". Below 200 it is square inches, as frames are marked with
/// them and no head is so small: "98", "98 in²".
class HeadSizeEdit final : public ParsedEdit<double> {
    Q_OBJECT

public:
    explicit HeadSizeEdit(QWidget* parent = nullptr);
};

/// The step of a dial in hundredths of its unit: "0.5", "0,25".
class StepEdit final : public ParsedEdit<int> {
    Q_OBJECT

public:
    explicit StepEdit(QWidget* parent = nullptr);
};

} // namespace rw::ui
