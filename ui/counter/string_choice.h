// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <QComboBox>
#include <QWidget>

#include <optional>
#include <vector>

namespace rw::ui {

/// Which string, and where it comes from: the lot the shop proposes, one that somebody picks, or the customer's set.
/// Typing a string's code moves to it.
class StringChoice final : public QWidget {
    Q_OBJECT

public:
    /// `alike`: the first choice is "the same as the mains" and needs no string of its own.
    enum class First { Blank, Alike };
    StringChoice(First first, const QString& name, QWidget* parent = nullptr);

    /// The strings to choose from. What was chosen stays chosen while it is there. Emits nothing.
    void setStrings(const std::vector<desk::ShelfString>& strings);
    /// Emits nothing.
    void setChosen(const std::optional<StringArticleId>& article, PieceSource source, const std::optional<LotId>& lot);
    /// For First::Alike, whose lots to offer while nothing else is chosen.
    void setMains(const std::optional<StringArticleId>& article);

    [[nodiscard]] std::optional<StringArticleId> article() const;
    [[nodiscard]] PieceSource source() const;
    [[nodiscard]] std::optional<LotId> lot() const;
    /// The string that is chosen, or that of the mains; nullptr when neither.
    [[nodiscard]] const desk::ShelfString* string() const;

    [[nodiscard]] QComboBox* strings() const { return m_string; }
    [[nodiscard]] QComboBox* sources() const { return m_source; }

Q_SIGNALS:
    void chosen();

private:
    void fillSources(PieceSource source, const std::optional<LotId>& lot);

    First m_first;
    QComboBox* m_string;
    QComboBox* m_source;
    std::vector<desk::ShelfString> m_strings;
    std::optional<StringArticleId> m_mains;
};

} // namespace rw::ui
