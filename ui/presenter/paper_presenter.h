// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/slip_printer.h"
#include "ui/presenter/station_presenter.h"

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

    [[nodiscard]] SlipPrinter& printer() const { return m_printer; }

Q_SIGNALS:
    void printed(const QString& words); ///< where each went, and why one did not
    void refused(const Refusal& why);   ///< by the ledger

private:
    [[nodiscard]] QString put(Slip slip, const desk::JobPaper& paper, bool& done);

    SlipPrinter& m_printer;
};

} // namespace rw::ui
