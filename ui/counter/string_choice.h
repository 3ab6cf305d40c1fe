// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <QComboBox>
#include <QWidget>

#include <optional>
#include <vector>

namespace rw::ui {

class LengthEdit;

/// Which string, and where it comes from: the lot the shop proposes, one that somebody picks, the customer's
/// own reel or set. Typing a string's code moves to it.
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
    /// Lots of the customer's own, of any string. Emits nothing.
    void setOwnLots(const std::vector<Lot>& lots);
    /// For First::Alike, whose lots to offer while nothing else is chosen, and where "as the mains" comes from.
    void setMains(const std::optional<StringArticleId>& article, PieceSource source);

    [[nodiscard]] std::optional<StringArticleId> article() const;
    [[nodiscard]] PieceSource source() const;
    [[nodiscard]] std::optional<LotId> lot() const;
    /// The string that is chosen, or that of the mains; nullptr when neither.
    [[nodiscard]] const desk::ShelfString* string() const;

    [[nodiscard]] QComboBox* strings() const { return m_string; }
    [[nodiscard]] QComboBox* sources() const { return m_source; }
    /// How long the customer's own set is; in view while one is chosen.
    [[nodiscard]] LengthEdit* setLength() const { return m_setLength; }

Q_SIGNALS:
    void chosen();

private:
    void fillSources(PieceSource source, const std::optional<LotId>& lot);
    void showSetLength();
    [[nodiscard]] bool isAlike() const { return m_first == First::Alike && !article(); }
    [[nodiscard]] qint64 entryFor(PieceSource source, const std::optional<LotId>& lot) const;

    First m_first;
    QComboBox* m_string;
    QComboBox* m_source;
    LengthEdit* m_setLength;
    std::vector<desk::ShelfString> m_strings;
    std::vector<Lot> m_ownLots;
    std::optional<StringArticleId> m_mains;
    PieceSource m_mainsSource = PieceSource::ShopLot;
};

} // namespace rw::ui
