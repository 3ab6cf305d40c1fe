// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/paper_size.h"

#include <QCoreApplication>
#include <QMarginsF>
#include <QPageSize>

namespace rw::ui {

namespace {
struct Paper {
    Q_DECLARE_TR_FUNCTIONS(Paper)
};

struct Sheet {
    PaperSize size;
    const char* code;
    QPageSize::PageSizeId page;
    QPageLayout::Orientation orientation;
    double margin; ///< millimetres
};
constexpr std::array<Sheet, 4> kSheets = {{
    {PaperSize::A4, "a4", QPageSize::A4, QPageLayout::Portrait, 12},
    {PaperSize::A5Landscape, "a5-across", QPageSize::A5, QPageLayout::Landscape, 8},
    {PaperSize::A6, "a6", QPageSize::A6, QPageLayout::Portrait, 5},
    {PaperSize::A7Landscape, "a7-across", QPageSize::A7, QPageLayout::Landscape, 4},
}};

const Sheet& sheetOf(PaperSize size) { return kSheets.at(static_cast<std::size_t>(size)); }
} // namespace

QString paperSizeWord(PaperSize size) {
    switch (size) {
    case PaperSize::A4:
        return Paper::tr("A4");
    case PaperSize::A5Landscape:
        return Paper::tr("A5 across");
    case PaperSize::A6:
        return Paper::tr("A6");
    case PaperSize::A7Landscape:
        break;
    }
    return Paper::tr("A7 across");
}

QString paperSizeCode(PaperSize size) { return QString::fromLatin1(sheetOf(size).code); }

PaperSize paperSizeFromCode(const QString& code, PaperSize otherwise) {
    for (const Sheet& sheet : kSheets) {
        if (code == QLatin1String(sheet.code)) {
            return sheet.size;
        }
    }
    return otherwise;
}

QPageLayout pageLayout(PaperSize size) {
    const Sheet& sheet = sheetOf(size);
    const double margin = sheet.margin;
    return {QPageSize(sheet.page), sheet.orientation, QMarginsF(margin, margin, margin, margin),
            QPageLayout::Millimeter};
}

QSizeF printableMillimetres(PaperSize size) { return pageLayout(size).paintRect(QPageLayout::Millimeter).size(); }

} // namespace rw::ui
