// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/new_shop.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <optional>

namespace rw::ui {

class MoneyEdit;
class ThicknessEdit;

/// A string the shop has not sold before: its code and name, what it is, what a bed of it costs.
class NewStringStrip final : public QWidget {
    Q_OBJECT

public:
    explicit NewStringStrip(QWidget* parent = nullptr);

    void start(const Currency& currency);
    /// Shows what cannot be read, with the keyboard on it; nothing then.
    std::optional<desk::NewString> string();
    void showRefusal(const Refusal& why);

    [[nodiscard]] QLineEdit* code() const { return m_code; }

private:
    Sheet* m_sheet;
    QLineEdit* m_code;
    QLineEdit* m_name;
    QLineEdit* m_colour;
    QComboBox* m_sport;
    QComboBox* m_material;
    ThicknessEdit* m_thickness;
    MoneyEdit* m_fullBed;
    MoneyEdit* m_halfBed;
    Sheet::Line m_nameLine{};
    Sheet::Line m_kindLine{};
    Sheet::Line m_priceLine{};
};

} // namespace rw::ui
