// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/scan_watch.h"

#include <QString>
#include <QWidget>

#include <optional>

class QAbstractItemModel;
class QLineEdit;
class QListView;

namespace rw::ui {

/// A line in which a piece of a name is typed, with what was found right below it. The arrow keys move, Enter or Tab
/// picks. Enter may come before the answer does: it waits for it and picks its first row then, or the one of the tag
/// that a scanner typed.
class Finder final : public QWidget {
    Q_OBJECT

public:
    Finder(QAbstractItemModel* results, QWidget* parent = nullptr);

    void setNames(const QString& name, const QString& placeholder);
    /// Shows the results as soon as the line is entered while nothing is picked.
    void setOpensWhenEntered(bool opens) { m_opensWhenEntered = opens; }
    /// The results belong to what was typed. While they do not, Enter waits.
    void setReady(bool ready);

    /// The row that Enter would pick now; nothing while the list is not open.
    [[nodiscard]] std::optional<int> highlighted() const;
    void pickHighlighted(); ///< precondition: highlighted()

    /// Which row a tag's number means, when the text is one: a scanner's Enter picks it and no other.
    void setScannedRow(std::optional<int> row) { m_scannedRow = row; }

    void setPicked(const QString& text); ///< what stands in the line; "": nothing is picked
    [[nodiscard]] bool hasPicked() const { return !m_picked.isEmpty(); }
    [[nodiscard]] QLineEdit* line() const { return m_line; }
    [[nodiscard]] QListView* list() const { return m_list; }

Q_SIGNALS:
    void typed(const QString& text);
    void hurried(); ///< Enter came before the answer: no more letters will follow
    void picked(int row);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void showResults();
    void hideResults();
    void place();
    [[nodiscard]] bool isOpen() const;
    bool handleKey(int key);

    QLineEdit* m_line;
    QListView* m_list;
    QString m_picked;
    bool m_opensWhenEntered = false;
    bool m_searching = false; ///< somebody typed since something was picked
    bool m_ready = true;
    bool m_pickWhenReady = false;
    ScanWatch m_scan;
    std::optional<int> m_scannedRow;
};

} // namespace rw::ui
