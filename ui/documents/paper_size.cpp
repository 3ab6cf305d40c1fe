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
    double rollLength; ///< millimetres off a roll, 0 for a sheet
    QPageLayout::Orientation orientation;
    double margin; ///< millimetres
};
constexpr double kRollWidth = 62;
constexpr std::array<Sheet, 6> kSheets = {{
    {PaperSize::A4, "a4", QPageSize::A4, 0, QPageLayout::Portrait, 12},
    {PaperSize::A5Landscape, "a5-across", QPageSize::A5, 0, QPageLayout::Landscape, 8},
    {PaperSize::A6, "a6", QPageSize::A6, 0, QPageLayout::Portrait, 5},
    {PaperSize::A7Landscape, "a7-across", QPageSize::A7, 0, QPageLayout::Landscape, 4},
    {PaperSize::RollLong, "roll-62-90", QPageSize::Custom, 90, QPageLayout::Landscape, 2},
    {PaperSize::RollShort, "roll-62-25", QPageSize::Custom, 25, QPageLayout::Portrait, 2},
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
        return Paper::tr("A7 across");
    case PaperSize::RollLong:
    case PaperSize::RollShort:
        break;
    }
    return Paper::tr("roll %1 mm, %2 mm long").arg(kRollWidth).arg(sheetOf(size).rollLength);
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
    const QPageSize page =
        sheet.page == QPageSize::Custom
            ? QPageSize(QSizeF(kRollWidth, sheet.rollLength), QPageSize::Millimeter, QString(), QPageSize::ExactMatch)
            : QPageSize(sheet.page);
    return {page, sheet.orientation, QMarginsF(margin, margin, margin, margin), QPageLayout::Millimeter};
}

QSizeF printableMillimetres(PaperSize size) { return pageLayout(size).paintRect(QPageLayout::Millimeter).size(); }

} // namespace rw::ui
