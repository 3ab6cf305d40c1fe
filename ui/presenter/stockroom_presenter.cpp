// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/stockroom_presenter.h"

namespace rw::ui {

StockroomPresenter::StockroomPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "stockroom", parent) {}

void StockroomPresenter::refresh() {
    read([](desk::Transaction& ledger) { return desk::shelf(ledger); },
         [this](Result<std::vector<desk::ShelfString>> shelf) {
             if (shelf) {
                 setShelf(std::move(*shelf));
             }
         });
    if (m_selected) {
        loadLife();
    }
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
    if (m_acting || !somebodyWorks()) {
        return;
    }
    m_acting = true;
    write(
        std::move(useCase),
        [this, done = std::move(done)](auto result) {
            m_acting = false;
            if (!result) {
                Q_EMIT refused(result.error());
                return;
            }
            done(*result);
        },
        [this] { m_acting = false; });
}

void StockroomPresenter::receive(const Receipt& receipt) {
    const desk::ReceiveLot command{receipt.tag.trimmed().toStdString(),
                                   receipt.article,
                                   receipt.kind,
                                   std::nullopt,
                                   receipt.nominal,
                                   receipt.price,
                                   receipt.shipping,
                                   receipt.batch.trimmed().toStdString(),
                                   by(),
                                   receipt.requestKey};
    act([command](desk::Transaction& ledger) { return desk::receiveLot(ledger, command); },
        [this](const Lot& lot) { Q_EMIT received(lot); });
}

void StockroomPresenter::correct(LotId lot, Length measured) {
    struct Corrected {
        Lot lot;
        Length by;
    };
    act(
        [command = desk::CorrectLot{lot, measured, by()}](desk::Transaction& ledger) -> Result<Corrected> {
            const auto before = ledger.lots().get(command.lot);
            auto after = desk::correctLot(ledger, command);
            if (!after) {
                return tl::unexpected<Refusal>(after.error());
            }
            const Length change = before ? after->length - before->length : Length::fromMillimetres(0);
            return Corrected{std::move(*after), change};
        },
        [this](const Corrected& done) { Q_EMIT corrected(done.lot, done.by); });
}

void StockroomPresenter::addString(const desk::SoldString& string) {
    struct Added {
        StringArticle article;
        std::vector<desk::ShelfString> shelf;
    };
    act(
        [string, now = shift().now()](desk::Transaction& ledger) -> Result<Added> {
            auto article = desk::addString(ledger, string, now);
            if (!article) {
                return tl::unexpected<Refusal>(article.error());
            }
            auto shelf = desk::shelf(ledger);
            if (!shelf) {
                return tl::unexpected<Refusal>(shelf.error());
            }
            return Added{std::move(*article), std::move(*shelf)};
        },
        [this](const Added& added) {
            setShelf(added.shelf);
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
    act([string, now = shift().now()](desk::Transaction& ledger) { return desk::changeString(ledger, string, now); },
        [this](const StringArticle& article) { Q_EMIT stringChanged(article); });
}

void StockroomPresenter::setShelf(std::vector<desk::ShelfString> shelf) {
    m_shelf = std::move(shelf);
    m_loaded = true;
    Q_EMIT shelfChanged();
}

} // namespace rw::ui
