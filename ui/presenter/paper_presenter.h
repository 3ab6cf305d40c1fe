// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stock_take.h"
#include "ui/port/slip_printer.h"
#include "ui/presenter/station_presenter.h"

#include <functional>
#include <optional>
#include <vector>

namespace rw::ui {

/// Prints the papers of a job as it stands in the ledger now. Printed again it is the same job with the same number.
class PaperPresenter final : public StationPresenter {
    Q_OBJECT

public:
    PaperPresenter(DeskRunner& runner, Shift& shift, SlipPrinter& printer, QObject* parent = nullptr);

    void refresh() override {} ///< nothing is shown that could be old

    /// One after the other; what the first is refused for stops the rest.
    void print(std::vector<Slip> slips, JobId job);

    /// A stock-take as it is shown, on one page to sign.
    void print(const desk::StockTakeSheet& sheet);

    [[nodiscard]] SlipPrinter& printer() const { return m_printer; }

Q_SIGNALS:
    void printed(const QString& words); ///< where each went, and why one did not
    void refused(const Refusal& why);   ///< by the ledger

private:
    [[nodiscard]] QString put(Slip slip, const desk::JobPaper& paper, bool& done);
    /// Prints something called `title`, and says what became of it; `done`: whether it came out.
    [[nodiscard]] static QString tell(const QString& title, const std::function<Result<PrintedSlip>()>& print,
                                      bool& done);
    [[nodiscard]] JobCardStyle style() const;

    SlipPrinter& m_printer;
};

} // namespace rw::ui
