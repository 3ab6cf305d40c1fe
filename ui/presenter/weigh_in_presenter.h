// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/lot_care.h"
#include "core/desk/stock_take.h"
#include "ui/presenter/station_presenter.h"

#include <optional>
#include <vector>

namespace rw::ui {

/// The shelf on the scale: one weight after another, what they say, and what is booked by them.
class WeighInPresenter final : public StationPresenter {
    Q_OBJECT

public:
    WeighInPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    /// Somebody comes to weigh: the stock-take that goes on, or a shelf of which nothing was weighed.
    void start();
    void refresh() override; ///< one that was ended here stays in view until somebody comes to weigh again
    [[nodiscard]] const desk::StockTakeSheet& sheet() const { return m_sheet; }
    [[nodiscard]] bool isGoingOn() const { return m_sheet.take && m_sheet.take->isGoingOn(); }

    struct OnScale {
        QString tag;
        Mass gross;
        std::optional<Mass> empty{};
        std::optional<Mass> fresh{};
    };
    void weigh(const OnScale& reading);
    void book(WeighingId weighing);
    void end(); ///< nothing while none goes on

    /// The last weighing that was booked here can be taken back, once.
    [[nodiscard]] bool canTakeBack() const { return m_last.has_value(); }
    void takeBack();

Q_SIGNALS:
    void sheetChanged();
    void weighed(const desk::WeighIn& in);
    void booked(const desk::WeighIn& in);
    void tookBack(const std::vector<Lot>& lots);
    void ended();
    void refused(const Refusal& why);

private:
    /// Writes once, and tells of a refusal. `useCase`: Result<T>(desk::Transaction&, const By&).
    template<class UseCase, class Done>
    void act(UseCase useCase, Done done);
    void setSheet(desk::StockTakeSheet sheet);

    desk::StockTakeSheet m_sheet;
    std::optional<desk::TakeBack::Booked> m_last;
};

} // namespace rw::ui
