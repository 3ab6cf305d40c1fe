// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <QComboBox>
#include <QLineEdit>
#include <QObject>

#include <optional>
#include <vector>

class QGridLayout;

namespace rw::ui {

class CountEdit;
class LengthEdit;
class MarginNote;
class MassEdit;
class MoneyEdit;

/// One line of a delivery: which string, how many, reels or packets, how long each, what each cost, the batch, what a
/// new reel weighs, the tag.
/// A line without a string is blank and counts for nothing.
class DeliveryRow final : public QObject {
    Q_OBJECT

public:
    /// Stands in the two rows of the grid from `gridRow` on: the editors, and below them what is wrong.
    DeliveryRow(int number, QGridLayout* grid, int gridRow, QWidget* parent);

    void start(const std::vector<desk::ShelfString>& strings, const Currency& currency);
    void setVisible(bool visible);
    void choose(StringArticleId article);
    void setTags(const QString& proposed); ///< what its lots get where nobody types a tag

    [[nodiscard]] bool isBlank() const;
    /// As far as it goes: enough to ask for tags and to add up. Nothing while it is blank.
    [[nodiscard]] std::optional<desk::DeliveryLine> sketch() const;
    /// Shows what cannot be read, with the keyboard on it; nothing then.
    [[nodiscard]] std::optional<desk::DeliveryLine> line();
    void showRefusal(const Refusal& why);
    void clearProblem();

    [[nodiscard]] QComboBox* strings() const { return m_string; }
    [[nodiscard]] CountEdit* count() const { return m_count; }
    [[nodiscard]] QComboBox* kinds() const { return m_kind; }
    [[nodiscard]] LengthEdit* length() const { return m_length; }
    [[nodiscard]] MoneyEdit* price() const { return m_price; }
    [[nodiscard]] QLineEdit* batch() const { return m_batch; }
    [[nodiscard]] MassEdit* weight() const { return m_weight; }
    [[nodiscard]] QLineEdit* tag() const { return m_tag; }
    [[nodiscard]] MarginNote* note() const { return m_note; }

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] const desk::ShelfString* string() const;
    [[nodiscard]] LotKind kind() const;
    /// What such a lot of the string held the last time, while nobody typed another length.
    void proposeLength();
    void stringChosen();

    std::vector<desk::ShelfString> m_strings;
    QString m_proposedLength;
    QComboBox* m_string;
    CountEdit* m_count;
    QComboBox* m_kind;
    LengthEdit* m_length;
    MoneyEdit* m_price;
    QLineEdit* m_batch;
    MassEdit* m_weight;
    QLineEdit* m_tag;
    MarginNote* m_note;
};

} // namespace rw::ui
