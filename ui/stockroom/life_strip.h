// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"
#include "ui/model/lot_life_model.h"
#include "ui/stockroom/ahead_view.h"

#include <QLabel>
#include <QListView>
#include <QWidget>

#include <optional>

namespace rw::ui {

class Shift;

/// The reel that is looked at: how many jobs are in it, and its life line by line. Or the string: what will become of
/// it, in words and drawn.
class LifeStrip final : public QWidget {
    Q_OBJECT

public:
    explicit LifeStrip(Shift& shift, QWidget* parent = nullptr);

    /// `there` nothing: no reel is looked at, `instead` says what to do.
    void show(const std::optional<desk::ShelfLot>& there, const std::optional<desk::LotLife>& life,
              const QString& instead);
    void showAhead(const desk::ShelfString& string); ///< precondition: somebody looked ahead
    [[nodiscard]] AheadView* aheadView() const { return m_ahead; }
    [[nodiscard]] QString words() const { return m_words->text(); }
    [[nodiscard]] QListView* lines() const { return m_lines; }

private:
    Shift& m_shift;
    LotLifeModel m_life;
    QLabel* m_title;
    QLabel* m_words;
    QListView* m_lines;
    AheadView* m_ahead;
};

} // namespace rw::ui
