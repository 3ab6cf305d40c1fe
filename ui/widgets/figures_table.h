// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace rw::ui {

class FiguresModel;

/// Figures in columns, as in an account book: hairlines between the rows, a heavier one above a sum. The row under the
/// keyboard has a quieter paper.
class FiguresTable final : public QTableView {
    Q_OBJECT

public:
    /// `figures` must outlive it. `wide`: the column that takes the room that is left.
    FiguresTable(FiguresModel* figures, int wide, const QString& accessibleName, QWidget* parent = nullptr);

    void resizeToFigures(); ///< after the figures changed

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    void keepRow();

    int m_wide;
    int m_row = 0; ///< where the keyboard was before the figures changed
};

} // namespace rw::ui
