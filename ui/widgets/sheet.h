// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QWidget>

class QGridLayout;
class QHBoxLayout;
class QLabel;

namespace rw::ui {

class MarginNote;

/// A sheet of paper with a ruled margin: lines to write on at the left, what follows from each beside it in the
/// margin. The tab order is the reading order, because lines are added in it.
class Sheet final : public QWidget {
    Q_OBJECT

public:
    explicit Sheet(QWidget* parent = nullptr);
    /// For a strip with no room to spare: less paper around the lines, so that a note has two.
    void setTight();

    struct Line {
        QLabel* label;
        MarginNote* note;
    };
    /// A line with one editor, or a button; the label is its accessible name unless it has one.
    Line addLine(const QString& label, QWidget* editor);
    /// A line with several things side by side, each with an accessible name of its own.
    Line addLine(const QString& label, const QList<QWidget*>& parts);
    void addHeading(const QString& words);
    /// Something across the whole sheet; the margin ends above it.
    void addAcross(QWidget* widget);
    void addStretch();
    void setLineVisible(const Line& line, bool visible);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QLabel* addLabel(const QString& label, QWidget* buddy);

    QGridLayout* m_grid;
    QList<MarginNote*> m_notes;
    QWidget* m_across = nullptr;
    int m_row = 0;
};

} // namespace rw::ui
