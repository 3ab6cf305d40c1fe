// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/presenter/bench_presenter.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QWidget>

#include <optional>
#include <vector>

namespace rw::ui {

class LengthEdit;

/// Confirming one cut: how long it really was, off which lot, and what the tape says is on the lot before it.
class CutStrip final : public QWidget {
    Q_OBJECT

public:
    explicit CutStrip(QWidget* parent = nullptr);

    void start(const PieceInHand& inHand, const desk::CardPiece& piece, const std::vector<Lot>& lots);
    /// What it was opened for. Precondition: it was started.
    [[nodiscard]] const PieceInHand& piece() const { return *m_piece; }
    [[nodiscard]] std::optional<LotId> lot() const; ///< nothing: the piece comes off none
    [[nodiscard]] std::optional<Length> length() const;
    [[nodiscard]] std::optional<Length> measuredLeft() const;

    /// Shows what cannot be read, with the keyboard on it; true when all can.
    bool isReadable();
    /// The same, and a length far from the planned one is asked about once.
    bool mayBeConfirmed();
    void showRefusal(const Refusal& why);
    void warn(const QString& words); ///< what the next Enter means
    /// Before an end is set aside somebody must have held a tape to it.
    void askToMeasure();

    [[nodiscard]] LengthEdit* lengthEdit() const { return m_length; }
    [[nodiscard]] LengthEdit* measuredEdit() const { return m_measured; }
    [[nodiscard]] QComboBox* lots() const { return m_lots; }
    [[nodiscard]] MarginNote* note() const { return m_line.note; }
    [[nodiscard]] MarginNote* measuredNote() const { return m_measuredLine.note; }

private:
    void writeNote();

    std::optional<PieceInHand> m_piece;
    std::optional<desk::CardPiece> m_of;
    std::vector<Lot> m_offered;
    std::optional<Length> m_askedAbout;
    Sheet* m_sheet;
    LengthEdit* m_length;
    QComboBox* m_lots;
    LengthEdit* m_measured;
    Sheet::Line m_line{};
    Sheet::Line m_measuredLine{};
};

} // namespace rw::ui
