// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/setting_sheet.h"

#include "core/desk/settings.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/text/setting_words.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"

#include <QVBoxLayout>

namespace rw::ui {

SettingSheet::SettingSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_text(new QLineEdit(m_sheet))
    , m_side(new Choice(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    for (const Side side : {Side::Left, Side::Right}) {
        m_side->addItem(sideWord(side), fromUtf8(sideText(side)));
    }
    for (QWidget* edit : QList<QWidget*>{m_text, m_side}) {
        edit->setAccessibleName(tr("What the setting says")); // until one is opened
    }
    m_line = m_sheet->addLine(tr("&It says"), {m_text, m_side});
}

bool SettingSheet::isChoice() const { return m_seen.name == desk::setting::kShortSide; }

void SettingSheet::start(const desk::SettingText& setting) {
    m_seen = setting;
    m_text->setVisible(!isChoice());
    m_side->setVisible(isChoice());
    m_line.note->clearAll();
    m_line.note->setNote(settingHelp(setting.name));
    QWidget* edit = isChoice() ? static_cast<QWidget*>(m_side) : m_text;
    edit->setAccessibleName(settingTitle(setting.name));
    edit->setAccessibleDescription(settingHelp(setting.name));
    m_text->setText(fromUtf8(setting.value));
    m_side->setCurrentIndex(m_side->findData(fromUtf8(setting.value)));
    setFocusProxy(edit);
    edit->setFocus(Qt::OtherFocusReason);
    m_text->selectAll();
}

QString SettingSheet::typed() const { return isChoice() ? m_side->currentData().toString() : m_text->text(); }

void SettingSheet::showRefusal(const Refusal& why) {
    m_line.note->setProblem(sentenceFor(why));
    focusProxy()->setFocus(Qt::OtherFocusReason);
}

QString SettingSheet::margin() const { return m_line.note->text(); }

} // namespace rw::ui
