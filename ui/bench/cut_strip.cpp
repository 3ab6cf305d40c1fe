// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/cut_strip.h"

#include "core/desk/cut_fit.h"
#include "core/desk/unusual.h"
#include "ui/text/bench_words.h"
#include "ui/text/card_notices.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/text/stock_words.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"

#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

CutStrip::CutStrip(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_length(new LengthEdit(m_sheet))
    , m_lots(new Choice(m_sheet))
    , m_measured(new LengthEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight(); // a refusal takes two lines of the margin
    m_length->setAccessibleName(tr("Length that is cut"));
    m_lots->setAccessibleName(tr("Off which reel"));
    m_measured->setMayBeBlank(true);
    m_measured->setMayBeZero(true);
    m_measured->setAccessibleName(tr("Measured on the reel before the cut"));
    m_measured->setPlaceholderText(tr("not measured"));
    m_line = m_sheet->addLine(tr("Cut"), {m_length, m_lots});
    m_measuredLine = m_sheet->addLine(tr("Tape"), m_measured);
    connect(m_length, &ValueEdit::valueChanged, this, [this] {
        m_line.note->setWarning({});
        writeNote();
    });
    connect(m_measured, &ValueEdit::valueChanged, this, [this] {
        m_measuredLine.note->setWarning({});
        writeNote();
    });
    connect(m_lots, &QComboBox::currentIndexChanged, this, &CutStrip::writeNote);
    m_line.note->watch(m_length);
    m_measuredLine.note->watch(m_measured);
    setTabOrder(m_length, m_lots);
    setTabOrder(m_lots, m_measured);
}

void CutStrip::start(const PieceInHand& inHand, const desk::CardPiece& piece, const std::vector<Lot>& lots) {
    m_piece = inHand;
    m_of = piece;
    m_offered = lots;
    m_askedAbout.reset();
    m_line.note->clearAll();
    m_measuredLine.note->clearAll();
    m_length->setValue(piece.piece.planned);
    m_measured->setValue(std::nullopt);
    m_lots->clear();
    if (piece.piece.source == PieceSource::CustomersSet) {
        m_lots->addItem(fromWhereText(piece.piece), qint64{0});
    }
    for (const auto& lot : lots) {
        m_lots->addItem(offLotText(lot), qint64{lot.id->value()});
    }
    writeNote();
    m_measuredLine.note->setNote(tr("only if you measured what is on the reel"));
    m_length->setFocus(Qt::OtherFocusReason);
    m_length->selectAll();
}

void CutStrip::writeNote() {
    if (!m_of) {
        return;
    }
    const QString role = pieceWord(m_of->piece.role);
    const auto chosen = std::ranges::find(m_offered, lot(), &Lot::id);
    if (lot() && chosen != m_offered.end() && length()) {
        const desk::CutFit fit = desk::fitOfCut(*chosen, *length(), measuredLeft());
        m_line.note->setNote(tr("%1: %2. Enter confirms.").arg(role, fitText(fit.fit, fit.leaves)));
    } else {
        m_line.note->setNote(tr("%1. Enter confirms.").arg(role));
    }
}

std::optional<LotId> CutStrip::lot() const {
    const qint64 id = m_lots->currentData().toLongLong();
    return id == 0 ? std::nullopt : std::optional(LotId::of(id));
}

std::optional<Length> CutStrip::length() const { return m_length->readable(); }

std::optional<Length> CutStrip::measuredLeft() const {
    return m_measured->isBlank() ? std::nullopt : m_measured->readable();
}

bool CutStrip::isReadable() {
    if (m_length->problem()) {
        m_line.note->sendBackTo(m_length);
        return false;
    }
    if (m_measured->problem()) {
        m_measuredLine.note->showProblems();
        m_measured->setFocus(Qt::OtherFocusReason);
        return false;
    }
    return true;
}

bool CutStrip::mayBeConfirmed() {
    if (!isReadable()) {
        return false;
    }
    const Length planned = m_of->piece.planned;
    if (desk::isFarFromPlanned(*length(), planned) && m_askedAbout != length()) {
        m_askedAbout = length();
        warn(farCutText(*length(), planned));
        return false;
    }
    return true;
}

void CutStrip::warn(const QString& words) {
    m_line.note->setNote({}); // there is room for one of the two
    m_line.note->setWarning(words);
}

void CutStrip::showRefusal(const Refusal& why) {
    m_line.note->setProblem(sentenceFor(why));
    if (why.code() == Code::NotEnoughString) {
        m_measuredLine.note->setNote({}); // there is room for one of the two
        m_measuredLine.note->setWarning(mayBeSetAsideText());
    }
    (why.code() == Code::MeasureFirst ? m_measured : m_length)->setFocus(Qt::OtherFocusReason);
}

void CutStrip::askToMeasure() {
    m_line.note->setProblem(measureToSetAsideText());
    m_measured->setFocus(Qt::OtherFocusReason);
}

} // namespace rw::ui
