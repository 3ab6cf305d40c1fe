// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/weigh_in_presenter.h"

namespace rw::ui {

WeighInPresenter::WeighInPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "stockroom", parent) {}

template<class UseCase, class Done>
void WeighInPresenter::act(UseCase useCase, Done done) {
    if (mayAct()) {
        writeOnce(
            [useCase = std::move(useCase), who = by()](desk::Transaction& ledger) { return useCase(ledger, who); },
            std::move(done), [this](const Refusal& why) { Q_EMIT refused(why); });
    }
}

void WeighInPresenter::start() {
    if (!isGoingOn()) {
        setSheet({});
    }
    refresh();
}

void WeighInPresenter::refresh() {
    if (m_sheet.take && !m_sheet.take->isGoingOn()) {
        return;
    }
    read([](desk::Transaction& ledger) { return desk::stockTakeSheet(ledger); },
         [this](Result<desk::StockTakeSheet> sheet) {
             const bool endedMeanwhile = m_sheet.take && !m_sheet.take->isGoingOn();
             if (sheet && !endedMeanwhile) {
                 setSheet(*std::move(sheet));
             }
         });
}

void WeighInPresenter::setSheet(desk::StockTakeSheet sheet) {
    m_sheet = std::move(sheet);
    Q_EMIT sheetChanged();
}

void WeighInPresenter::weigh(const OnScale& reading) {
    act(
        [reading](desk::Transaction& ledger, const By& who) {
            return desk::weigh(ledger, {.tag = reading.tag.trimmed().toStdString(),
                                        .gross = reading.gross,
                                        .empty = reading.empty,
                                        .fresh = reading.fresh,
                                        .stockTake = desk::goOnWithStockTake(ledger, who),
                                        .by = who});
        },
        [this](const desk::WeighIn& in) {
            if (!isGoingOn()) {
                m_sheet = {}; // the one that was ended gives way to the next
            }
            Q_EMIT weighed(in);
        });
}

void WeighInPresenter::book(WeighingId weighing) {
    act(
        [weighing](desk::Transaction& ledger, const By& who) {
            return desk::bookWeighing(ledger, {weighing, who});
        },
        [this](const desk::WeighIn& in) {
            m_last = desk::TakeBack::Booked{*in.lot.id, *in.weighing.booked};
            Q_EMIT booked(in);
        });
}

void WeighInPresenter::takeBack() {
    if (!m_last) {
        return;
    }
    act(
        [booked = *m_last](desk::Transaction& ledger, const By& who) {
            return desk::takeBack(ledger, {{booked}, who});
        },
        [this](const std::vector<Lot>& lots) {
            m_last.reset();
            Q_EMIT tookBack(lots);
        });
}

void WeighInPresenter::end() {
    if (!isGoingOn()) {
        return;
    }
    act([take = m_sheet.take->id](desk::Transaction& ledger,
                                  const By& who) { return desk::endStockTake(ledger, take, who); },
        [this](const desk::StockTakeSheet& sheet) {
            setSheet(sheet);
            Q_EMIT ended();
        });
}

} // namespace rw::ui
