// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stock_take.h"
#include "ui/model/shelf_model.h"
#include "ui/port/desk_runner.h"
#include "ui/port/outside.h"
#include "ui/widgets/station.h"

#include <QLabel>

#include <memory>
#include <optional>

class QStackedWidget;

namespace rw::ui {

class ClosedLotsPage;
class CorrectStrip;
class DeliverySheet;
class KeepStrip;
class LifePage;
class LifeStrip;
class OrderPage;
class OrderPresenter;
class OwnerPresenter;
class PinSheet;
class ShelfView;
class Shift;
class StockroomPresenter;
class StringStrip;
class TakeOffStrip;
class WeighInPage;
class WeighInPresenter;

/// Stockroom: the shelf with its reels, what runs short, and below it the reel that is looked at; a sheet for a
/// delivery, and pages for a lot's whole life and for what to order.
class StockroomStation final : public Station {
    Q_OBJECT

public:
    StockroomStation(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, const Outside& outside,
                     QWidget* parent = nullptr);
    ~StockroomStation() override;

    [[nodiscard]] QString name() const override { return tr("Stockroom"); }
    [[nodiscard]] QString menuName() const override { return tr("Stoc&kroom"); }
    [[nodiscard]] QString guidePage() const override { return QStringLiteral("stockroom"); }
    void enter() override;
    void refresh() override;
    void leave() override; ///< what the shop paid is hidden again

    [[nodiscard]] StockroomPresenter& presenter() const { return *m_presenter; }
    [[nodiscard]] ShelfView* shelf() const { return m_view; }
    [[nodiscard]] LifeStrip* lifeStrip() const { return m_life; }
    [[nodiscard]] LifePage* lifePage() const { return m_lifePage; }
    [[nodiscard]] OrderPage* orderPage() const { return m_orderPage; }
    [[nodiscard]] ClosedLotsPage* closedLots() const { return m_closed; }
    [[nodiscard]] DeliverySheet* deliverySheet() const { return m_delivery; }
    [[nodiscard]] TakeOffStrip* takeOffStrip() const { return m_takeOff; }
    [[nodiscard]] KeepStrip* keepStrip() const { return m_keep; }
    [[nodiscard]] StringStrip* stringStrip() const { return m_string; }
    [[nodiscard]] PinSheet* pinSheet() const { return m_pin; }
    [[nodiscard]] WeighInPage* weighInPage() const { return m_weighIn; }
    [[nodiscard]] WeighInPresenter& weighing() const { return *m_weighing; }
    [[nodiscard]] QString runningShort() const { return m_short->text(); }

    void lookAhead(); ///< from a reel to what will become of its string, and back
    void openReceive();
    void openCorrect();
    void openTakeOff();
    void openKeep();
    void openLife();   ///< of the lot under the keyboard, on the shelf or among those that are gone
    void openClosed(); ///< the lots of the string under the keyboard that are gone
    void openOrder();
    void openNewString();
    void openString(); ///< what the string under the keyboard is and costs, once the ledger has told it
    void openWeighIn();
    void backToShelf(); ///< back to the shelf

Q_SIGNALS:
    void sheetWanted(const desk::StockTakeSheet& sheet); ///< on paper, to sign

private:
    void open(QWidget* what);
    void enableKeys();
    void build();
    void makeKeys();
    void connectShelf();
    void connectLots();
    void connectStrings();
    void connectOrder();
    void connectOwner();
    void connectWeighIn();
    void takeBack();
    void showOrHidePaid();
    void showShelf();
    void showLife();
    void showRefusal(const Refusal& why);
    void confirm();
    void copy();
    void saveOrder();
    void goBack();                         ///< from a life to where it was opened from, from anything else to the shelf
    [[nodiscard]] QWidget* opened() const; ///< the strip, sheet or page in front; the life strip: nothing is
    [[nodiscard]] std::optional<desk::ShelfLot> currentLot() const;
    [[nodiscard]] std::optional<StringArticleId> currentString() const;
    [[nodiscard]] bool isShopsString() const;

    Shift& m_shift;
    OwnerPresenter& m_owner;
    Outside m_outside;
    std::unique_ptr<StockroomPresenter> m_presenter;
    std::unique_ptr<OrderPresenter> m_order;
    std::unique_ptr<WeighInPresenter> m_weighing;
    ShelfModel m_shelf;
    QStackedWidget* m_pages;
    QWidget* m_shelfPage;
    QLabel* m_short;
    QLabel* m_empty;
    ShelfView* m_view;
    QStackedWidget* m_strip;
    LifeStrip* m_life;
    CorrectStrip* m_correct;
    TakeOffStrip* m_takeOff;
    KeepStrip* m_keep;
    StringStrip* m_string;
    PinSheet* m_pin;
    DeliverySheet* m_delivery;
    LifePage* m_lifePage;
    WeighInPage* m_weighIn;
    OrderPage* m_orderPage;
    ClosedLotsPage* m_closed;
    QAction* m_aheadKey = nullptr;
    QAction* m_correctKey = nullptr;
    QAction* m_takeOffKey = nullptr;
    QAction* m_receiveKey = nullptr;
    QAction* m_keepKey = nullptr;
    QAction* m_orderKey = nullptr;
    QAction* m_saveKey = nullptr;
    QAction* m_newKey = nullptr;
    QAction* m_editKey = nullptr;
    QAction* m_lifeKey = nullptr;
    QAction* m_copyKey = nullptr;
    QAction* m_closedKey = nullptr;
    QAction* m_paidKey = nullptr;
    QAction* m_takeBackKey = nullptr;
    QAction* m_weighKey = nullptr;
    QAction* m_bookKey = nullptr;
    QAction* m_endKey = nullptr;
    QAction* m_printKey = nullptr;
    QAction* m_confirmKey = nullptr;
    QAction* m_backKey = nullptr;
    bool m_filling = false;
    bool m_paidOfOrder = false; ///< the PIN is asked for what an order costs
    bool m_amongClosed = false; ///< the lots that are gone are looked at, or the life of one of them
};

} // namespace rw::ui
