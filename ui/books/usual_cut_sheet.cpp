// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/usual_cut_sheet.h"

#include "ui/text/format.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/refused_line.h"

#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr int kAnyMaterial = -1;
constexpr Length kNothing = Length::fromMillimetres(0);
} // namespace

UsualCutSheet::UsualCutSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_role(new Choice(m_sheet))
    , m_material(new Choice(m_sheet))
    , m_route(new QLineEdit(m_sheet))
    , m_length(new LengthEdit(m_sheet))
    , m_shortSide(new LengthEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    m_role->setAccessibleName(tr("Piece"));
    for (const PieceRole role : {PieceRole::Whole, PieceRole::Mains, PieceRole::Crosses}) {
        m_role->addItem(pieceWord(role), static_cast<int>(role));
    }
    m_material->setAccessibleName(tr("Kind of string"));
    m_material->addItem(tr("any string"), kAnyMaterial);
    for (const Material material :
         {Material::NaturalGut, Material::Nylon, Material::Multifilament, Material::Polyester, Material::Aramid}) {
        m_material->addItem(materialWord(material), static_cast<int>(material));
    }
    m_route->setAccessibleName(tr("Route"));
    m_length->setAccessibleName(tr("Cut"));
    m_shortSide->setAccessibleName(tr("Short side"));
    m_shortSide->setMayBeBlank(true);
    m_whatLine = m_sheet->addLine(tr("F&or"), {m_role, m_material});
    m_routeLine = m_sheet->addLine(tr("&Route"), m_route);
    m_lengthLine = m_sheet->addLine(tr("&Cut"), {m_length, m_shortSide});
    m_lengthLine.note->watch(m_length);
    m_lengthLine.note->watch(m_shortSide);
    connect(m_role, &QComboBox::currentIndexChanged, this, &UsualCutSheet::showRole);
}

void UsualCutSheet::showRole() {
    const bool whole = m_role->currentData().toInt() == static_cast<int>(PieceRole::Whole);
    m_route->setVisible(whole);
    m_sheet->setLineVisible(m_routeLine, whole);
    m_shortSide->setVisible(whole);
}

void UsualCutSheet::startNew(FrameModelId frame) {
    fill({frame, PieceRole::Whole, std::nullopt, "plain-2", kNothing, std::nullopt}, true);
}

void UsualCutSheet::startWith(const desk::UsualCut& cut) { fill(cut, false); }

void UsualCutSheet::fill(const desk::UsualCut& cut, bool isNew) {
    m_cut = cut;
    m_role->setCurrentIndex(m_role->findData(static_cast<int>(cut.role)));
    m_material->setCurrentIndex(m_material->findData(cut.material ? static_cast<int>(*cut.material) : kAnyMaterial));
    m_route->setText(fromUtf8(cut.route));
    m_length->setValue(isNew ? std::nullopt : std::optional(cut.cut));
    m_shortSide->setValue(cut.shortSide);
    m_shortSide->setPlaceholderText(tr("short side"));
    for (auto* edit : QList<QWidget*>{m_role, m_material, m_route}) {
        edit->setEnabled(isNew);
    }
    for (const auto& note : {m_whatLine.note, m_routeLine.note, m_lengthLine.note}) {
        note->clearAll();
    }
    m_whatLine.note->setNote(tr("a cut for its own kind goes before one for any string"));
    m_routeLine.note->setNote(tr("how the one piece lies: plain-1, plain-2, wrap-first-2"));
    m_lengthLine.note->setNote(tr("until a racket has a cut of its own"));
    showRole();
    QWidget* first = isNew ? static_cast<QWidget*>(m_role) : m_length;
    setFocusProxy(first);
    first->setFocus(Qt::OtherFocusReason);
    m_length->selectAll();
}

std::optional<desk::UsualCut> UsualCutSheet::cut() {
    m_whatLine.note->setProblem({});
    m_routeLine.note->setProblem({});
    m_lengthLine.note->setProblem({});
    desk::UsualCut cut = *m_cut;
    cut.role = static_cast<PieceRole>(m_role->currentData().toInt());
    const bool whole = cut.role == PieceRole::Whole;
    for (auto* edit : {m_length, m_shortSide}) {
        if ((whole || edit == m_length) && edit->problem()) {
            m_lengthLine.note->sendBackTo(edit);
            return std::nullopt;
        }
    }
    const int material = m_material->currentData().toInt();
    cut.material = material == kAnyMaterial ? std::nullopt : std::optional(static_cast<Material>(material));
    cut.route = whole ? m_route->text().trimmed().toStdString() : std::string();
    cut.cut = *m_length->readable();
    cut.shortSide = whole ? m_shortSide->readable() : std::nullopt;
    return cut;
}

void UsualCutSheet::showRefusal(const Refusal& why) {
    const bool ofRoute =
        why.code() == Code::RouteUnknown || why.code() == Code::RouteDoesNotFit || why.code() == Code::StartEndUnknown;
    showBeside(why,
               {{"cut", m_length, m_lengthLine.note},
                {"short side", m_shortSide, m_lengthLine.note},
                {"route", m_route, m_routeLine.note}},
               ofRoute ? m_routeLine.note : m_whatLine.note);
}

} // namespace rw::ui
