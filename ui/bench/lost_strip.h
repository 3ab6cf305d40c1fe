// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/presenter/bench_presenter.h"

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

    struct Cut {
        PieceInHand piece;
        QString words; ///< "mains 5.6 m off K-2"
    };
    /// The pieces that are cut, the one that is meant first. Precondition: not empty.
    void start(std::vector<Cut> cuts);
    void otherPiece();
    /// The piece that is meant. Precondition: it was started.
    [[nodiscard]] const PieceInHand& piece() const { return m_cuts.front().piece; }
    [[nodiscard]] static LostReason reasonOfKey(int digit); ///< 1 to 8

private:
    void write();

    std::vector<Cut> m_cuts;
    QLabel* m_what;
    QLabel* m_reasons;
};

} // namespace rw::ui
