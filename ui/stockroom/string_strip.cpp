// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/string_strip.h"

#include "core/strings/gauge.h"
#include "ui/text/format.h"
#include "ui/text/stockroom_words.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/refused_line.h"
#include "ui/widgets/thickness_edit.h"
#include "ui/widgets/weight_edit.h"

#include <QVBoxLayout>

#include <utility>

namespace rw::ui {

StringStrip::StringStrip(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_code(new QLineEdit(m_sheet))
    , m_name(new QLineEdit(m_sheet))
    , m_colour(new QLineEdit(m_sheet))
    , m_sport(new Choice(m_sheet))
    , m_material(new Choice(m_sheet))
    , m_thickness(new ThicknessEdit(m_sheet))
    , m_fullBed(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_halfBed(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_packet(new LengthEdit(m_sheet))
    , m_packetPrice(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_gauge(new QLineEdit(m_sheet))
    , m_weight(new WeightEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    const auto name = [](QLineEdit* edit, const QString& words, const QString& hint) {
        edit->setAccessibleName(words);
        edit->setPlaceholderText(hint);
    };
    name(m_code, tr("Short code"), tr("code"));
    name(m_name, tr("Name of the string"), tr("name"));
    name(m_colour, tr("Colour"), tr("colour"));
    name(m_gauge, tr("Gauge"), tr("gauge"));
    m_fullBed->setAccessibleName(tr("Price of a full bed"));
    m_halfBed->setAccessibleName(tr("Price of half a bed"));
    m_code->setMaximumWidth(90);
    m_sport->setAccessibleName(tr("Sport"));
    m_material->setAccessibleName(tr("Kind"));
    m_thickness->setAccessibleName(tr("Thickness"));
    m_weight->setAccessibleName(tr("Weight of a metre"));
    m_weight->setMayBeBlank(true);
    m_halfBed->setMayBeBlank(true);
    m_packet->setAccessibleName(tr("What a packet holds"));
    m_packet->setPlaceholderText(tr("packet, m"));
    m_packet->setMayBeBlank(true);
    m_packetPrice->setAccessibleName(tr("Price of a packet"));
    m_packetPrice->setMayBeBlank(true);
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        m_sport->addItem(sportWord(sport), static_cast<int>(sport));
    }
    for (const Material material :
         {Material::Nylon, Material::Multifilament, Material::Polyester, Material::NaturalGut, Material::Aramid}) {
        m_material->addItem(materialWord(material), static_cast<int>(material));
    }
    m_nameLine = m_sheet->addLine(tr("String"), {m_code, m_name, m_colour});
    m_kindLine = m_sheet->addLine(tr("Kind"), {m_sport, m_material, m_thickness});
    m_priceLine = m_sheet->addLine(tr("Price"), {m_fullBed, m_halfBed});
    m_packetLine = m_sheet->addLine(tr("Packet"), {m_packet, m_packetPrice});
    m_gaugeLine = m_sheet->addLine(tr("Gauge"), {m_gauge, m_weight});
    m_kindLine.note->watch(m_thickness);
    m_gaugeLine.note->watch(m_weight);
    m_priceLine.note->watch(m_fullBed);
    m_priceLine.note->watch(m_halfBed);
    m_packetLine.note->watch(m_packet);
    m_packetLine.note->watch(m_packetPrice);
    connect(m_thickness, &QLineEdit::textChanged, this, &StringStrip::proposeGauge);
}

void StringStrip::startNew(Sport sport, const Currency& currency) {
    m_changed.reset();
    StringArticle blank;
    blank.sport = sport;
    fill(blank);
    m_thickness->clear();
    setPrices({blank, std::nullopt, std::nullopt}, currency);
    clearNotes();
    m_nameLine.note->setNote(tr("the code is what you write on its reels: K gives K-1, K-2"));
    m_priceLine.note->setNote(tr("a full bed, and half a bed: blank is half of it"));
    m_packetLine.note->setNote(packetHintText());
    m_gaugeLine.note->setNote(tr("if you like, with the weight of a metre. Enter adds it, Esc goes back"));
    m_code->setFocus(Qt::OtherFocusReason);
}

void StringStrip::startWith(const desk::SoldString& string, const Currency& currency) {
    m_changed = string.article;
    fill(string.article);
    setPrices(string, currency);
    clearNotes();
    m_nameLine.note->setNote(tr("the code stays: it is written on its reels"));
    m_priceLine.note->setNote(tr("from today on; half a bed left blank is half of it"));
    m_packetLine.note->setNote(packetHintText());
    m_gaugeLine.note->setNote(tr("and the weight of a metre. Enter keeps it, Esc goes back"));
    m_name->setFocus(Qt::OtherFocusReason);
    m_name->selectAll();
}

void StringStrip::fill(const StringArticle& article) {
    m_code->setText(fromUtf8(article.code));
    m_code->setEnabled(!m_changed);
    m_name->setText(fromUtf8(article.name));
    m_colour->setText(fromUtf8(article.colour));
    m_sport->setCurrentIndex(m_sport->findData(static_cast<int>(article.sport)));
    m_material->setCurrentIndex(m_material->findData(static_cast<int>(article.material)));
    m_thickness->setValue(article.diameterMicrometres);
    m_gauge->setText(fromUtf8(article.gaugeName));
    m_weight->setValue(article.milligramsPerMetre);
    m_packet->setValue(article.packet);
}

void StringStrip::setPrices(const desk::SoldString& string, const Currency& currency) {
    for (auto* edit : {m_fullBed, m_halfBed, m_packetPrice}) {
        edit->setCurrency(currency);
    }
    m_fullBed->setValue(string.fullBed);
    m_halfBed->setValue(string.halfBed);
    m_packetPrice->setValue(string.packet);
    const QString code = fromUtf8(currency.code());
    m_fullBed->setPlaceholderText(tr("full bed, %1").arg(code));
    m_halfBed->setPlaceholderText(tr("half a bed, %1").arg(code));
    m_packetPrice->setPlaceholderText(tr("a packet, %1").arg(code));
}

void StringStrip::clearNotes() {
    for (const auto& line : {m_nameLine, m_kindLine, m_priceLine, m_packetLine, m_gaugeLine}) {
        line.note->clearAll();
    }
}

void StringStrip::proposeGauge() {
    const auto thickness = m_thickness->micrometres();
    const auto gauge = thickness ? nearestGaugeName(*thickness) : std::string_view();
    m_gauge->setPlaceholderText(gauge.empty() ? tr("gauge") : fromUtf8(gauge));
}

std::optional<desk::SoldString> StringStrip::string() {
    for (const auto& line : {m_nameLine, m_kindLine, m_priceLine, m_packetLine, m_gaugeLine}) {
        line.note->setProblem({});
    }
    const std::initializer_list<std::pair<ValueEdit*, MarginNote*>> edits = {
        {m_thickness, m_kindLine.note}, {m_fullBed, m_priceLine.note},      {m_halfBed, m_priceLine.note},
        {m_packet, m_packetLine.note},  {m_packetPrice, m_packetLine.note}, {m_weight, m_gaugeLine.note}};
    for (const auto& [edit, note] : edits) {
        if (edit->problem()) {
            note->sendBackTo(edit);
            return std::nullopt;
        }
    }
    StringArticle article = m_changed.value_or(StringArticle());
    article.code = m_code->text().toStdString();
    article.name = m_name->text().toStdString();
    article.colour = m_colour->text().toStdString();
    article.sport = static_cast<Sport>(m_sport->currentData().toInt());
    article.material = static_cast<Material>(m_material->currentData().toInt());
    article.diameterMicrometres = *m_thickness->micrometres();
    article.gaugeName = m_gauge->text().toStdString();
    article.milligramsPerMetre = m_weight->readable();
    article.packet = m_packet->readable();
    return desk::SoldString{article, m_fullBed->readable(), m_halfBed->readable(), m_packetPrice->readable()};
}

void StringStrip::showRefusal(const Refusal& why) {
    showBeside(why,
               {{"code", m_code, m_nameLine.note},
                {"name", m_name, m_nameLine.note},
                {"colour", m_colour, m_nameLine.note},
                {"thickness", m_thickness, m_kindLine.note},
                {"price", m_fullBed, m_priceLine.note},
                {"packet", m_packet, m_packetLine.note},
                {"gauge", m_gauge, m_gaugeLine.note},
                {"weight", m_weight, m_gaugeLine.note}},
               m_nameLine.note);
}

} // namespace rw::ui
