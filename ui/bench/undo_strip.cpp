// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/undo_strip.h"

#include "ui/text/bench_words.h"
#include "ui/text/sentences.h"
#include "ui/widgets/look.h"

#include <QVBoxLayout>

namespace rw::ui {

UndoStrip::UndoStrip(QWidget* parent)
    : QWidget(parent)
    , m_what(new QLabel(this))
    , m_keys(new QLabel(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(28, 14, 24, 14);
    layout->addWidget(m_what);
    layout->addWidget(m_keys);
    m_what->setFont(largeFont(*this, 1.3));
    m_what->setWordWrap(true);
    m_what->setAccessibleName(tr("What would be taken back"));
    m_keys->setFont(largeFont(*this, 1.15));
    m_keys->setWordWrap(true);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
}

void UndoStrip::start(const desk::LastDone& last) {
    m_last = last;
    m_what->setText(takeBackText(last));
    m_keys->setText(tr("Enter takes it back   ·   Esc leaves it"));
}

void UndoStrip::showRefusal(const Refusal& why) { m_keys->setText(QStringLiteral("✕ ") + sentenceFor(why)); }

} // namespace rw::ui
