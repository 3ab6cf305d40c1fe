// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/desk/job_paper.h"
#include "ui/documents/slip.h"

#include <QString>
#include <QStringList>

namespace rw::ui {

/// Which printer and paper serve a slip at this station.
struct SlipChoice {
    QString printer; ///< "": a PDF in the folder
    PaperSize paper = PaperSize::A4;
    bool operator==(const SlipChoice&) const = default;
};

/// Where a slip went.
struct PrintedSlip {
    Slip slip;
    QString where;            ///< the printer's name, or the file's path
    bool isFile = false;      ///< `where` is a PDF
    QString missingPrinter{}; ///< the one that was chosen and is not there any more, so that it became a file
};

/// The printers of this computer, and which of them serves which slip here. Printing again is the same slip again.
class SlipPrinter {
public:
    virtual ~SlipPrinter() = default;

    [[nodiscard]] virtual QStringList printers() const = 0; ///< by name; often none
    [[nodiscard]] virtual QString folder() const = 0;       ///< where PDFs go
    [[nodiscard]] virtual SlipChoice choice(Slip slip) const = 0;
    virtual void choose(Slip slip, const SlipChoice& choice) = 0;
    /// Precondition: canBePrinted. FileUnwritable when the PDF or the printer's own spool can take nothing; throws FileLost on a full disk.
    [[nodiscard]] virtual Result<PrintedSlip> print(Slip slip, const desk::JobPaper& paper,
                                                    const JobCardStyle& style) = 0;
    /// A page that is no job's, on A4: on the printer of the job card, else as the PDF `file` in the folder. As
    /// print().
    [[nodiscard]] virtual Result<PrintedSlip> printPage(const QString& title, const QString& file,
                                                        const PaintPage& paint) = 0;
};

} // namespace rw::ui
