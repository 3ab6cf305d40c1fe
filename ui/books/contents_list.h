// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QListWidget>
#include <QStyledItemDelegate>

namespace rw::ui {

/// The contents of the books: the names of the pages, one below the other. The page that is open has a bold name and a
/// bar at its edge; while the keyboard is on the contents, a frame too.
class ContentsList final : public QListWidget {
    Q_OBJECT

public:
    explicit ContentsList(QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override; ///< as wide as the longest name
};

} // namespace rw::ui
