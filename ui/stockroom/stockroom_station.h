// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/shelf_model.h"
#include "ui/port/desk_runner.h"
#include "ui/widgets/station.h"

#include <QLabel>

#include <memory>
#include <optional>

class QStackedWidget;

namespace rw::ui {

class CorrectStrip;
class LifeStrip;
class ReceiveStrip;
class ShelfView;
class Shift;
class StockroomPresenter;
class StringStrip;

/// Stockroom: the shelf with its reels, what runs short, and below it the reel that is looked at.
class StockroomStation final : public Station {
    Q_OBJECT

public:
    StockroomStation(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~StockroomStation() override;

    [[nodiscard]] QString name() const override { return tr("Stockroom"); }
    [[nodiscard]] QString menuName() const override { return tr("Stoc&kroom"); }
    [[nodiscard]] QString guidePage() const override { return QStringLiteral("stockroom"); }
    void enter() override;
    void refresh() override;

    [[nodiscard]] StockroomPresenter& presenter() const { return *m_presenter; }
    [[nodiscard]] ShelfView* shelf() const { return m_view; }
    [[nodiscard]] LifeStrip* lifeStrip() const { return m_life; }
    [[nodiscard]] ReceiveStrip* receiveStrip() const { return m_receive; }
    [[nodiscard]] CorrectStrip* correctStrip() const { return m_correct; }
    [[nodiscard]] StringStrip* stringStrip() const { return m_string; }
    [[nodiscard]] QString runningShort() const { return m_short->text(); }

    void openReceive();
    void openCorrect();
    void openNewString();
    void openString(); ///< what the string under the keyboard is and costs, once the ledger has told it
    void closeStrip();

private:
    void open(QWidget* strip);
    void enableKeys();
    void build();
    void makeKeys();
    void connectPresenter();
    void showShelf();
    void showLife();
    void confirm();
    [[nodiscard]] std::optional<desk::ShelfLot> currentLot() const;
    [[nodiscard]] std::optional<StringArticleId> currentString() const;

    Shift& m_shift;
    std::unique_ptr<StockroomPresenter> m_presenter;
    ShelfModel m_shelf;
    QLabel* m_short;
    QLabel* m_empty;
    ShelfView* m_view;
    QStackedWidget* m_strip;
    LifeStrip* m_life;
    ReceiveStrip* m_receive;
    CorrectStrip* m_correct;
    StringStrip* m_string;
    QAction* m_correctKey = nullptr;
    QAction* m_receiveKey = nullptr;
    QAction* m_newKey = nullptr;
    QAction* m_editKey = nullptr;
    QAction* m_confirmKey = nullptr;
    QAction* m_backKey = nullptr;
    bool m_filling = false;
};

} // namespace rw::ui
