// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/stockroom_presenter.h"

namespace rw::ui {

StockroomPresenter::StockroomPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "stockroom", parent) {}

void StockroomPresenter::refresh() {
    read([](desk::Transaction& ledger) { return desk::shelf(ledger); },
         [this](Result<std::vector<desk::ShelfString>> shelf) {
             if (shelf) {
                 m_shelf = std::move(*shelf);
                 m_loaded = true;
                 Q_EMIT shelfChanged();
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

void StockroomPresenter::receive(const Receipt& receipt) {
    if (m_acting || !somebodyWorks()) {
        return;
    }
    m_acting = true;
    const desk::ReceiveLot command{receipt.tag.trimmed().toStdString(),
                                   receipt.article,
                                   receipt.kind,
                                   std::nullopt,
                                   receipt.nominal,
                                   receipt.price,
                                   receipt.shipping,
                                   receipt.batch.trimmed().toStdString(),
                                   by()};
    write([command](desk::Transaction& ledger) { return desk::receiveLot(ledger, command); },
          [this](Result<Lot> lot) {
              m_acting = false;
              if (!lot) {
                  Q_EMIT refused(lot.error());
                  return;
              }
              Q_EMIT received(*lot);
          },
          [this] { m_acting = false; });
}

void StockroomPresenter::correct(LotId lot, Length measured) {
    if (m_acting || !somebodyWorks()) {
        return;
    }
    m_acting = true;
    const desk::CorrectLot command{lot, measured, by()};
    struct Corrected {
        Lot lot;
        Length by;
    };
    write(
        [command](desk::Transaction& ledger) -> Result<Corrected> {
            const auto before = ledger.lots().get(command.lot);
            auto after = desk::correctLot(ledger, command);
            if (!after) {
                return tl::unexpected<Refusal>(after.error());
            }
            const Length change = before ? after->length - before->length : Length::fromMillimetres(0);
            return Corrected{std::move(*after), change};
        },
        [this](Result<Corrected> done) {
            m_acting = false;
            if (!done) {
                Q_EMIT refused(done.error());
                return;
            }
            Q_EMIT corrected(done->lot, done->by);
        },
        [this] { m_acting = false; });
}

void StockroomPresenter::addString(const desk::NewString& string) {
    if (m_acting) {
        return;
    }
    m_acting = true;
    write([string, now = shift().now()](desk::Transaction& ledger) { return desk::addString(ledger, string, now); },
          [this](Result<StringArticle> article) {
              m_acting = false;
              if (!article) {
                  Q_EMIT refused(article.error());
                  return;
              }
              Q_EMIT stringAdded(*article);
          },
          [this] { m_acting = false; });
}

} // namespace rw::ui
