// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QString>

namespace rw::ui {

class ValueEdit;

/// What follows from a line of a sheet, written in the margin beside it; or what is wrong with the line.
/// Each kind has its own sign, so that none is told by its colour alone.
class MarginNote final : public QLabel {
    Q_OBJECT

public:
    explicit MarginNote(QWidget* parent = nullptr);

    void setNote(const QString& words);
    void setWarning(const QString& words); ///< "▲": something to know before going on
    void setProblem(const QString& words); ///< "✕": the line cannot stay as it is; "" takes it back
    /// Says what is wrong with an editor of the line, which must have a problem, and takes the keyboard back to it.
    void sendBackTo(ValueEdit* editor);
    [[nodiscard]] QString problem() const { return m_problem; }
    void clearAll();

    /// Shows what is wrong with an editor once it was left, and takes it back as soon as it is right. `says` makes the
    /// sentence. The words become the editor's accessible description too.
    void watch(ValueEdit* editor);
    /// Shows at once what is wrong with the watched editors; true when nothing is.
    bool showProblems();

private:
    void write();
    void check(ValueEdit* editor, bool mayComplain);

    QString m_note;
    QString m_warning;
    QString m_problem;
    QList<ValueEdit*> m_watched;
    ValueEdit* m_complaining = nullptr;
};

} // namespace rw::ui
