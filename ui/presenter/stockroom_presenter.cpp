// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/stockroom_presenter.h"

#include "core/desk/running_short.h"

namespace rw::ui {

StockroomPresenter::StockroomPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "stockroom", parent) {}

Result<StockroomPresenter::Shelves> StockroomPresenter::readShelves(desk::Transaction& ledger, Instant now) {
    auto shop = desk::shelfAhead(ledger, now);
    auto kept = desk::keptForCustomers(ledger);
    if (!shop || !kept) {
        return tl::unexpected<Refusal>(shop ? kept.error() : shop.error());
    }
    return Shelves{std::move(*shop), std::move(*kept)};
}

void StockroomPresenter::refresh() {
    read([now = shift().now()](desk::Transaction& ledger) { return readShelves(ledger, now); },
         [this](Result<Shelves> shelves) {
             if (shelves) {
                 setShelves(std::move(*shelves));
             }
         });
    if (m_selected) {
        loadLife();
    }
    if (m_closedOf) {
        loadClosed();
    }
}

void StockroomPresenter::lookAtClosed(StringArticleId string) {
    m_closedOf = string;
    m_closed.clear();
    loadClosed();
}

void StockroomPresenter::loadClosed() {
    m_closedAsked.cancel();
    m_closedAsked = read([string = *m_closedOf](desk::Transaction& ledger) { return desk::closedLots(ledger, string); },
                         [this](Result<std::vector<desk::ClosedLot>> closed) {
                             if (closed) {
                                 m_closed = std::move(*closed);
                                 Q_EMIT closedChanged();
                             } else {
                                 Q_EMIT refused(closed.error());
                             }
                         });
}

void StockroomPresenter::openClosed(LotId lot) {
    m_closedLifeAsked.cancel();
    m_closedLifeAsked = read([lot](desk::Transaction& ledger) { return desk::lotLife(ledger, lot); },
                             [this](const Result<desk::LotLife>& life) {
                                 if (life) {
                                     Q_EMIT closedLifeRead(*life);
                                 } else {
                                     Q_EMIT refused(life.error());
                                 }
                             });
}

void StockroomPresenter::leaveClosed() {
    m_closedOf.reset();
    m_closed.clear();
    m_closedAsked.cancel();
    m_closedLifeAsked.cancel();
}

void StockroomPresenter::select(const std::optional<LotId>& lot) {
    if (m_selected == lot) {
        return;
    }
    m_selected = lot;
    m_life.reset();
    m_lifeAsked.cancel();
    if (lot) {
        loadLife();
    } else {
        Q_EMIT lifeChanged();
    }
}

void StockroomPresenter::loadLife() {
    m_lifeAsked.cancel();
    m_lifeAsked = read([lot = *m_selected](desk::Transaction& ledger) { return desk::lotLife(ledger, lot); },
                       [this](Result<desk::LotLife> life) {
                           m_life.reset();
                           if (life) {
                               m_life = std::move(*life);
                           }
                           Q_EMIT lifeChanged();
                       });
}

template<class UseCase, class Done>
void StockroomPresenter::act(UseCase useCase, Done done) {
    writeOnce(std::move(useCase), std::move(done), [this](const Refusal& why) { Q_EMIT refused(why); });
}

namespace {
/// What was written, and the movements by which it is taken back.
template<class Done>
struct Booked {
    Done done;
    std::vector<desk::TakeBack::Booked> movements;
};

desk::TakeBack::Booked lastMovement(desk::Transaction& ledger, const Lot& lot) {
    return {*lot.id, *ledger.lots().movements(*lot.id).back().id};
}

std::string words(const QString& typed) { return typed.trimmed().toStdString(); }
} // namespace

void StockroomPresenter::receive(const Receipt& receipt) {
    if (!mayAct()) {
        return;
    }
    const desk::ReceiveLot command{.tag = words(receipt.tag),
                                   .article = receipt.article,
                                   .kind = receipt.kind,
                                   .owner = receipt.owner,
                                   .nominal = receipt.nominal,
                                   .price = receipt.price,
                                   .shipping = receipt.shipping,
                                   .batch = words(receipt.batch),
                                   .by = by(),
                                   .requestKey = receipt.requestKey,
                                   .newWeight = receipt.newWeight};
    act(
        [command](desk::Transaction& ledger) -> Result<Booked<Lot>> {
            auto lot = desk::receiveLot(ledger, command);
            if (!lot) {
                return tl::unexpected<Refusal>(lot.error());
            }
            const auto movement = lastMovement(ledger, *lot);
            return Booked<Lot>{std::move(*lot), {movement}};
        },
        [this](const Booked<Lot>& booked) {
            m_last = booked.movements;
            Q_EMIT received(booked.done);
        });
}

void StockroomPresenter::receive(const Parcel& parcel) {
    if (!mayAct()) {
        return;
    }
    using Lots = std::vector<Lot>;
    const desk::ReceiveDelivery command{.requestKey = parcel.requestKey,
                                        .supplier = words(parcel.supplier),
                                        .lines = parcel.lines,
                                        .shipping = parcel.shipping,
                                        .by = by()};
    act(
        [command](desk::Transaction& ledger) -> Result<Booked<Lots>> {
            auto lots = desk::receiveDelivery(ledger, command);
            if (!lots) {
                return tl::unexpected<Refusal>(lots.error());
            }
            Booked<Lots> booked{std::move(*lots), {}};
            for (const Lot& lot : booked.done) {
                booked.movements.push_back(lastMovement(ledger, lot));
            }
            return booked;
        },
        [this](const Booked<Lots>& booked) {
            m_last = booked.movements;
            Q_EMIT delivered(booked.done);
        });
}

void StockroomPresenter::proposeTags(const std::vector<desk::DeliveryLine>& lines) {
    m_tagsAsked.cancel();
    m_tagsAsked = read([lines](desk::Transaction& ledger) { return desk::tagsFor(ledger, lines); },
                       [this](const Result<std::vector<std::vector<std::string>>>& tags) {
                           if (tags) {
                               Q_EMIT tagsProposed(*tags);
                           }
                       });
}

void StockroomPresenter::readSuppliers() {
    using Names = std::vector<std::string>;
    read([](desk::Transaction& ledger) -> Result<Names> { return ledger.lots().suppliers(); },
         [this](const Result<Names>& names) {
             if (names) {
                 Q_EMIT suppliersRead(*names);
             }
         });
}

void StockroomPresenter::correct(LotId lot, Length measured, const QString& why) {
    if (!mayAct()) {
        return;
    }
    struct Corrected {
        Lot lot;
        Length by;
    };
    act(
        [command = desk::CorrectLot{lot, measured, by(), words(why)}](
            desk::Transaction& ledger) -> Result<Booked<Corrected>> {
            const auto before = ledger.lots().get(command.lot);
            auto after = desk::correctLot(ledger, command);
            if (!after) {
                return tl::unexpected<Refusal>(after.error());
            }
            const auto movement = lastMovement(ledger, *after);
            const Length change = before ? after->length - before->length : Length::fromMillimetres(0);
            return Booked<Corrected>{{std::move(*after), change}, {movement}};
        },
        [this](const Booked<Corrected>& booked) {
            m_last = booked.movements;
            Q_EMIT corrected(booked.done.lot, booked.done.by);
        });
}

void StockroomPresenter::takeOff(LotId lot, desk::LotLeaves how, const QString& why) {
    if (!mayAct()) {
        return;
    }
    act(
        [command = desk::TakeOffShelf{lot, how, words(why), by()}](desk::Transaction& ledger) -> Result<Booked<Lot>> {
            auto gone = desk::takeOffShelf(ledger, command);
            if (!gone) {
                return tl::unexpected<Refusal>(gone.error());
            }
            const auto movement = lastMovement(ledger, *gone);
            return Booked<Lot>{std::move(*gone), {movement}};
        },
        [this, how](const Booked<Lot>& booked) {
            m_last = booked.movements;
            Q_EMIT tookOff(booked.done, how);
        });
}

void StockroomPresenter::takeBack() {
    if (!mayAct()) {
        return;
    }
    act([command = desk::TakeBack{m_last, by()}](desk::Transaction& ledger) { return desk::takeBack(ledger, command); },
        [this](const std::vector<Lot>& lots) {
            m_last.clear();
            Q_EMIT tookBack(lots);
        });
}

void StockroomPresenter::addString(const desk::SoldString& string) {
    if (!mayAct()) {
        return;
    }
    struct Added {
        StringArticle article;
        Shelves shelves;
    };
    act(
        [string, now = shift().now()](desk::Transaction& ledger) -> Result<Added> {
            auto article = desk::addString(ledger, string, now);
            if (!article) {
                return tl::unexpected<Refusal>(article.error());
            }
            auto shelves = readShelves(ledger, now);
            if (!shelves) {
                return tl::unexpected<Refusal>(shelves.error());
            }
            return Added{std::move(*article), std::move(*shelves)};
        },
        [this](const Added& added) {
            setShelves(added.shelves);
            Q_EMIT stringAdded(added.article);
        });
}

void StockroomPresenter::readString(StringArticleId string) {
    read([string, now = shift().now()](desk::Transaction& ledger) { return desk::soldString(ledger, string, now); },
         [this](const Result<desk::SoldString>& found) {
             if (found) {
                 Q_EMIT stringRead(*found);
             } else {
                 Q_EMIT refused(found.error());
             }
         });
}

void StockroomPresenter::changeString(const desk::SoldString& string) {
    if (!mayAct()) {
        return;
    }
    act([string, now = shift().now()](desk::Transaction& ledger) { return desk::changeString(ledger, string, now); },
        [this](const StringArticle& article) { Q_EMIT stringChanged(article); });
}

void StockroomPresenter::setShelves(Shelves shelves) {
    m_shelf = std::move(shelves.shop);
    m_kept = std::move(shelves.kept);
    m_loaded = true;
    Q_EMIT shelfChanged();
}

} // namespace rw::ui
