// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <optional>

namespace rw::ui {

class LengthEdit;

/// A cut that the shop usually makes for a frame, from its old book.
class UsualCutSheet final : public QWidget {
    Q_OBJECT

public:
    explicit UsualCutSheet(QWidget* parent = nullptr);

    void startNew(FrameModelId frame);
    void startWith(const desk::UsualCut& cut); ///< what it is for stays
    /// Nothing while something cannot be read, with the keyboard on it.
    std::optional<desk::UsualCut> cut();
    void showRefusal(const Refusal& why);

private:
    void fill(const desk::UsualCut& cut, bool isNew);
    void showRole();

    std::optional<desk::UsualCut> m_cut; ///< as it was
    Sheet* m_sheet;
    QComboBox* m_role;
    QComboBox* m_material;
    QLineEdit* m_route;
    LengthEdit* m_length;
    LengthEdit* m_shortSide;
    Sheet::Line m_whatLine{};
    Sheet::Line m_routeLine{};
    Sheet::Line m_lengthLine{};
};

} // namespace rw::ui
