// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/sold_string.h"
#include "core/desk/stockroom.h"
#include "ui/presenter/station_presenter.h"

#include <optional>
#include <vector>

namespace rw::ui {

/// The shelf: what is left, receiving, correcting, the life of a lot.
class StockroomPresenter final : public StationPresenter {
    Q_OBJECT

public:
    StockroomPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override;

    [[nodiscard]] const std::vector<desk::ShelfString>& shelf() const { return m_shelf; }
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    /// The lot that is looked at; its life comes with lifeChanged().
    void select(const std::optional<LotId>& lot);
    [[nodiscard]] const std::optional<LotId>& selected() const { return m_selected; }
    [[nodiscard]] const std::optional<desk::LotLife>& life() const { return m_life; }

    struct Receipt {
        StringArticleId article;
        LotKind kind = LotKind::Reel;
        QString tag; ///< "" : the next free one
        Length nominal;
        Money price;
        Money shipping;
        QString batch;
        std::string requestKey = {}; ///< of the strip that was filled in
    };
    void receive(const Receipt& receipt);
    void correct(LotId lot, Length measured);
    void addString(const desk::SoldString& string);
    /// Asks what is said of a string and what it costs today; comes with stringRead().
    void readString(StringArticleId string);
    void changeString(const desk::SoldString& string);

Q_SIGNALS:
    void shelfChanged();
    void lifeChanged();
    void received(const Lot& lot);
    void corrected(const Lot& lot, Length by);
    void stringAdded(const StringArticle& article); ///< it is on the shelf already
    void stringRead(const desk::SoldString& string);
    void stringChanged(const StringArticle& article);
    void refused(const Refusal& why);

private:
    void loadLife();
    void setShelf(std::vector<desk::ShelfString> shelf);
    /// Writes, unless something is being written: what was pressed twice is done once. Tells of a refusal.
    template<class UseCase, class Done>
    void act(UseCase useCase, Done done);

    std::vector<desk::ShelfString> m_shelf;
    bool m_loaded = false;
    bool m_acting = false;
    std::optional<LotId> m_selected;
    std::optional<desk::LotLife> m_life;
    desk::CancelToken m_lifeAsked;
};

} // namespace rw::ui
