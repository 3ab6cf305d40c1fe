// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/slip_printer.h"

#include <QSettings>

#include <memory>

namespace rw::ui {

/// The printers that this computer knows, and the choice among them kept in its own settings: another station chooses
/// for itself.
class StationPrinter final : public SlipPrinter {
public:
    /// In the user's own settings; PDFs go to a folder of the program among the user's documents.
    StationPrinter();
    /// In a settings file and a folder of the caller's.
    StationPrinter(const QString& settingsFile, QString folder);

    [[nodiscard]] QStringList printers() const override;
    [[nodiscard]] QString folder() const override { return m_folder; }
    [[nodiscard]] SlipChoice choice(Slip slip) const override;
    void choose(Slip slip, const SlipChoice& choice) override;
    [[nodiscard]] Result<PrintedSlip> print(Slip slip, const desk::JobPaper& paper, const JobCardStyle& style) override;
    [[nodiscard]] Result<PrintedSlip> printPage(const QString& title, const QString& file,
                                                const PaintPage& paint) override;

private:
    [[nodiscard]] Result<PrintedSlip> put(Slip slip, const SlipChoice& chosen, const QString& title,
                                          const QString& file, const PaintPage& paint) const;

    std::unique_ptr<QSettings> m_settings;
    QString m_folder;
};

} // namespace rw::ui
