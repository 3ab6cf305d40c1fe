// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/world_error.h"
#include "ui/port/slip_printer.h"

#include <map>
#include <vector>

namespace rw::ui::test {

/// A printer that keeps what it was given, for tests to look at.
class PaperTray final : public SlipPrinter {
public:
    [[nodiscard]] QStringList printers() const override { return names; }
    [[nodiscard]] QString folder() const override { return QStringLiteral("/papers"); }
    [[nodiscard]] SlipChoice choice(Slip slip) const override {
        const auto found = choices.find(slip);
        return found == choices.end() ? SlipChoice{QString(), usualPaper(slip)} : found->second;
    }
    void choose(Slip slip, const SlipChoice& choice) override { choices[slip] = choice; }
    Result<PrintedSlip> print(Slip slip, const desk::JobPaper& paper, const JobCardStyle&) override {
        if (diskIsFull) {
            throw FileLost("no space left");
        }
        slips.emplace_back(slip, paper.card.job.number);
        return PrintedSlip{.slip = slip, .where = QStringLiteral("Counter"), .isFile = false};
    }

    Result<PrintedSlip> printPage(const QString& title, const QString& file, const PaintPage&) override {
        if (diskIsFull) {
            throw FileLost("no space left");
        }
        pages << title;
        return PrintedSlip{.slip = Slip::JobCard, .where = folder() + QLatin1Char('/') + file, .isFile = true};
    }

    QStringList names;
    QStringList pages; ///< that are no job's, in the order they came out
    std::map<Slip, SlipChoice> choices;
    std::vector<std::pair<Slip, std::int64_t>> slips; ///< in the order they came out
    bool diskIsFull = false;
};

} // namespace rw::ui::test
