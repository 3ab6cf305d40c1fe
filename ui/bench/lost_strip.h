// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"

#include <QLabel>
#include <QWidget>

#include <vector>

namespace rw::ui {

/// Losing a length: the second of the two keys says why. With two pieces cut, the last one is meant until Space turns
/// to the other.
class LostStrip final : public QWidget {
    Q_OBJECT

public:
    explicit LostStrip(QWidget* parent = nullptr);

    /// The pieces that are cut, the one that is meant first. Precondition: not empty.
    void start(const std::vector<const desk::CardPiece*>& pieces);
    void otherPiece();
    [[nodiscard]] PieceRole role() const { return m_roles.front(); }
    [[nodiscard]] static LostReason reasonOfKey(int digit); ///< 1 to 8

private:
    void write();

    struct Cut {
        QString words;
    };
    std::vector<PieceRole> m_roles;
    std::vector<Cut> m_cuts;
    QLabel* m_what;
    QLabel* m_reasons;
};

} // namespace rw::ui
