// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/new_string_strip.h"

#include "ui/text/sentences.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/thickness_edit.h"

#include <QVBoxLayout>

namespace rw::ui {

NewStringStrip::NewStringStrip(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_code(new QLineEdit(m_sheet))
    , m_name(new QLineEdit(m_sheet))
    , m_colour(new QLineEdit(m_sheet))
    , m_sport(new Choice(m_sheet))
    , m_material(new Choice(m_sheet))
    , m_thickness(new ThicknessEdit(m_sheet))
    , m_fullBed(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_halfBed(new MoneyEdit(Currency::pounds(), m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    const auto name = [](QLineEdit* edit, const QString& words, const QString& hint, int most) {
        edit->setAccessibleName(words);
        edit->setPlaceholderText(hint);
        edit->setMaxLength(most);
    };
    name(m_code, tr("Short code"), tr("code"), 20);
    name(m_name, tr("Name of the string"), tr("name"), 80);
    name(m_colour, tr("Colour"), tr("colour"), 40);
    m_code->setMaximumWidth(90);
    m_sport->setAccessibleName(tr("Sport"));
    m_material->setAccessibleName(tr("Kind"));
    m_thickness->setAccessibleName(tr("Thickness"));
    m_fullBed->setAccessibleName(tr("Price of a full bed"));
    m_halfBed->setAccessibleName(tr("Price of a half bed"));
    m_halfBed->setMayBeBlank(true);
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        m_sport->addItem(sportWord(sport), static_cast<int>(sport));
    }
    for (const Material material :
         {Material::Nylon, Material::Multifilament, Material::Polyester, Material::NaturalGut, Material::Aramid}) {
        m_material->addItem(materialWord(material), static_cast<int>(material));
    }
    m_nameLine = m_sheet->addLine(tr("New string"), {m_code, m_name, m_colour});
    m_kindLine = m_sheet->addLine(tr("Kind"), {m_sport, m_material, m_thickness});
    m_priceLine = m_sheet->addLine(tr("Price"), {m_fullBed, m_halfBed});
    m_kindLine.note->watch(m_thickness);
    m_priceLine.note->watch(m_fullBed);
    m_priceLine.note->watch(m_halfBed);
}

void NewStringStrip::start(const Currency& currency) {
    for (auto* edit : {m_code, m_name, m_colour}) {
        edit->clear();
    }
    m_thickness->clear();
    for (auto* edit : {m_fullBed, m_halfBed}) {
        edit->setCurrency(currency);
        edit->setValue(std::nullopt);
    }
    for (const auto& line : {m_nameLine, m_kindLine, m_priceLine}) {
        line.note->clearAll();
    }
    m_nameLine.note->setNote(tr("the code is what you write on its reels: K gives K-1, K-2"));
    m_priceLine.note->setNote(tr("a full bed, and half a bed when it is sold so. Enter adds it, Esc goes back"));
    m_code->setFocus(Qt::OtherFocusReason);
}

std::optional<desk::NewString> NewStringStrip::string() {
    if (m_thickness->problem()) {
        m_kindLine.note->sendBackTo(m_thickness);
        return std::nullopt;
    }
    for (auto* edit : {m_fullBed, m_halfBed}) {
        if (edit->problem()) {
            m_priceLine.note->sendBackTo(edit);
            return std::nullopt;
        }
    }
    StringArticle article;
    article.code = m_code->text().trimmed().toStdString();
    article.name = m_name->text().trimmed().toStdString();
    article.colour = m_colour->text().trimmed().toStdString();
    article.sport = static_cast<Sport>(m_sport->currentData().toInt());
    article.material = static_cast<Material>(m_material->currentData().toInt());
    article.diameterMicrometres = *m_thickness->micrometres();
    return desk::NewString{article, *m_fullBed->readable(), m_halfBed->readable()};
}

void NewStringStrip::showRefusal(const Refusal& why) { m_nameLine.note->setProblem(sentenceFor(why)); }

} // namespace rw::ui
