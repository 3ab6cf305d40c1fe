// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/sold_string.h"
#include "core/desk/stockroom.h"
#include "ui/presenter/station_presenter.h"

#include <optional>
#include <string>
#include <vector>

namespace rw::ui {

/// The shelf: what is left, what comes in, what is done to a lot, the life of a lot.
class StockroomPresenter final : public StationPresenter {
    Q_OBJECT

public:
    StockroomPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override;

    [[nodiscard]] const std::vector<desk::ShelfString>& shelf() const { return m_shelf; } ///< the shop's
    [[nodiscard]] const std::vector<desk::ShelfString>& kept() const { return m_kept; }   ///< customers'
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    /// The lot that is looked at; its life comes with lifeChanged().
    void select(const std::optional<LotId>& lot);
    [[nodiscard]] const std::optional<LotId>& selected() const { return m_selected; }
    [[nodiscard]] const std::optional<desk::LotLife>& life() const { return m_life; }

    /// A single lot: one that is kept for a customer, or the shop's own.
    struct Receipt {
        StringArticleId article;
        LotKind kind = LotKind::Reel;
        QString tag; ///< "" : the next free one
        Length nominal;
        Money price;
        Money shipping;
        QString batch;
        std::string requestKey = {}; ///< of the strip that was filled in
        std::optional<CustomerId> owner = std::nullopt;
        std::optional<Mass> newWeight = std::nullopt; ///< of the reel on its spool
    };
    void receive(const Receipt& receipt);

    struct Parcel {
        std::string requestKey; ///< of the sheet that was filled in
        QString supplier;
        std::vector<desk::DeliveryLine> lines;
        Money shipping; ///< of all
    };
    void receive(const Parcel& parcel);
    /// Asks what would be written on the lots of these lines; comes with tagsProposed().
    void proposeTags(const std::vector<desk::DeliveryLine>& lines);
    void readSuppliers(); ///< comes with suppliersRead()

    /// The lots of a string that are gone, kept up to date until they are left; they come with closedChanged().
    void lookAtClosed(StringArticleId string);
    [[nodiscard]] const std::vector<desk::ClosedLot>& closed() const { return m_closed; }
    void openClosed(LotId lot); ///< its life comes with closedLifeRead()
    void leaveClosed();

    void correct(LotId lot, Length measured, const QString& why = {});
    void takeOff(LotId lot, desk::LotLeaves how, const QString& why);

    /// The last thing that this window wrote about a lot can be taken back, once.
    [[nodiscard]] bool canTakeBack() const { return !m_last.empty(); }
    void takeBack();

    void addString(const desk::SoldString& string);
    /// Asks what is said of a string and what it costs today; comes with stringRead().
    void readString(StringArticleId string);
    void changeString(const desk::SoldString& string);

Q_SIGNALS:
    void shelfChanged();
    void lifeChanged();
    void received(const Lot& lot);
    void delivered(const std::vector<Lot>& lots);
    void tagsProposed(const std::vector<std::vector<std::string>>& tags); ///< a list for each line asked for
    void suppliersRead(const std::vector<std::string>& names);
    void closedChanged();
    void closedLifeRead(const rw::desk::LotLife& life);
    void corrected(const Lot& lot, Length by);
    void tookOff(const Lot& lot, desk::LotLeaves how);
    void tookBack(const std::vector<Lot>& lots);
    void stringAdded(const StringArticle& article); ///< it is on the shelf already
    void stringRead(const desk::SoldString& string);
    void stringChanged(const StringArticle& article);
    void refused(const Refusal& why);

private:
    struct Shelves {
        std::vector<desk::ShelfString> shop;
        std::vector<desk::ShelfString> kept;
    };
    [[nodiscard]] static Result<Shelves> readShelves(desk::Transaction& ledger, Instant now);
    void loadLife();
    void loadClosed();
    void setShelves(Shelves shelves);
    /// Writes once, and tells of a refusal.
    template<class UseCase, class Done>
    void act(UseCase useCase, Done done);

    std::vector<desk::ShelfString> m_shelf;
    std::vector<desk::ShelfString> m_kept;
    bool m_loaded = false;
    std::vector<desk::TakeBack::Booked> m_last;
    std::optional<LotId> m_selected;
    std::optional<desk::LotLife> m_life;
    desk::CancelToken m_lifeAsked;
    desk::CancelToken m_tagsAsked;
    std::optional<StringArticleId> m_closedOf; ///< the string whose closed lots are looked at
    std::vector<desk::ClosedLot> m_closed;
    desk::CancelToken m_closedAsked;
    desk::CancelToken m_closedLifeAsked;
};

} // namespace rw::ui
