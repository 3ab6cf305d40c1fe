// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/lost_strip.h"

#include "ui/text/words.h"
#include "ui/widgets/look.h"

#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>
#include <cassert>
#include <utility>

namespace rw::ui {

namespace {
constexpr LostReason kReasons[] = {LostReason::CameShort,  LostReason::Kinked,   LostReason::Nicked,
                                   LostReason::Snapped,    LostReason::MisWoven, LostReason::WrongString,
                                   LostReason::FaultyReel, LostReason::Other};
} // namespace

LostStrip::LostStrip(QWidget* parent)
    : QWidget(parent)
    , m_what(new QLabel(this))
    , m_reasons(new QLabel(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(28, 14, 24, 14);
    layout->addWidget(m_what);
    layout->addWidget(m_reasons);
    m_what->setFont(largeFont(*this, 1.3));
    m_what->setAccessibleName(tr("What was lost"));
    m_reasons->setAccessibleName(tr("Why"));
    m_reasons->setWordWrap(true);
    m_reasons->setFont(largeFont(*this, 1.15));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
}

LostReason LostStrip::reasonOfKey(int digit) {
    assert(digit >= 1 && digit <= static_cast<int>(std::size(kReasons)));
    return kReasons[digit - 1];
}

void LostStrip::start(std::vector<Cut> cuts) {
    m_cuts = std::move(cuts);
    write();
}

void LostStrip::otherPiece() {
    std::ranges::rotate(m_cuts, m_cuts.begin() + 1);
    write();
}

void LostStrip::write() {
    QString what = tr("Lost: %1").arg(m_cuts.front().words);
    if (m_cuts.size() > 1) {
        what += tr("   (Space: the other piece)");
    }
    m_what->setText(what);
    QStringList reasons;
    for (int digit = 1; digit <= static_cast<int>(std::size(kReasons)); ++digit) {
        reasons << QStringLiteral("%1 %2").arg(digit).arg(lostReasonWord(reasonOfKey(digit)));
        reasons.back().replace(QLatin1Char(' '), QChar::Nbsp); // a key and its reason stay on one line
    }
    m_reasons->setText(reasons.join(QStringLiteral("   ")));
}

} // namespace rw::ui
