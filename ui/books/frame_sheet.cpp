// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/frame_sheet.h"

#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/measure_edits.h"
#include "ui/widgets/pattern_edit.h"
#include "ui/widgets/refused_line.h"
#include "ui/widgets/tension_edit.h"

#include <QStringList>
#include <QVBoxLayout>

#include <utility>

namespace rw::ui {

namespace {
constexpr int kUnknown = -1;

template<class Value>
int dataOf(const std::optional<Value>& value) {
    return value ? static_cast<int>(*value) : kUnknown;
}

template<class Value>
std::optional<Value> chosen(const QComboBox* choice) {
    const int data = choice->currentData().toInt();
    return data == kUnknown ? std::nullopt : std::optional(static_cast<Value>(data));
}
} // namespace

FrameSheet::FrameSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_name(new QLineEdit(m_sheet))
    , m_sport(new Choice(m_sheet))
    , m_pattern(new PatternEdit(m_sheet))
    , m_start(new Choice(m_sheet))
    , m_lowest(new TensionEdit(m_sheet))
    , m_highest(new TensionEdit(m_sheet))
    , m_length(new HeadMeasureEdit(m_sheet))
    , m_width(new HeadMeasureEdit(m_sheet))
    , m_size(new HeadSizeEdit(m_sheet))
    , m_outermostMain(new HeadMeasureEdit(m_sheet))
    , m_lastCross(new HeadMeasureEdit(m_sheet))
    , m_wall(new HeadMeasureEdit(m_sheet))
    , m_mainsSpan(new HeadMeasureEdit(m_sheet))
    , m_crossesSpan(new HeadMeasureEdit(m_sheet))
    , m_throat(new Choice(m_sheet))
    , m_side(new Choice(m_sheet))
    , m_reason(new QLineEdit(m_sheet))
    , m_mark(new QLineEdit(m_sheet))
    , m_crossesStart(new Choice(m_sheet))
    , m_note(new QLineEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    build();
    setFocusProxy(m_name);
}

void FrameSheet::build() {
    const auto name = [](QWidget* edit, const QString& words) { edit->setAccessibleName(words); };
    const auto measure = [](QLineEdit* edit, const QString& words, const QString& hint) {
        edit->setAccessibleName(words);
        edit->setPlaceholderText(hint);
    };
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        m_sport->addItem(sportWord(sport), static_cast<int>(sport));
    }
    m_start->addItem(tr("mains start: not known"), kUnknown);
    for (const HoopEnd end : {HoopEnd::Head, HoopEnd::Throat}) {
        m_start->addItem(tr("mains start at the %1").arg(hoopEndWord(end)), static_cast<int>(end));
    }
    m_throat->addItem(tr("bridge"), false);
    m_throat->addItem(tr("open throat"), true);
    m_side->addItem(tr("either side"), kUnknown);
    for (const Side side : {Side::Left, Side::Right}) {
        m_side->addItem(tr("only %1").arg(sideWord(side)), static_cast<int>(side));
    }
    m_crossesStart->addItem(tr("crosses from the head"), false);
    m_crossesStart->addItem(tr("crosses from the throat too"), true);
    name(m_name, tr("Frame"));
    name(m_sport, tr("Sport"));
    name(m_pattern, tr("Pattern"));
    name(m_start, tr("Where the mains start"));
    measure(m_lowest, tr("Lowest marked tension"), tr("lowest"));
    measure(m_highest, tr("Highest marked tension"), tr("highest"));
    measure(m_length, tr("Inside the head, along the shaft"), tr("length, mm"));
    measure(m_width, tr("Inside the head, across"), tr("width, mm"));
    measure(m_size, tr("Size of the head"), tr("size, cm²"));
    measure(m_outermostMain, tr("Outermost main"), tr("outer main, mm"));
    measure(m_lastCross, tr("Cross nearest the throat"), tr("last cross, mm"));
    measure(m_wall, tr("Wall of the hoop"), tr("wall, mm"));
    measure(m_mainsSpan, tr("From the first main to the last"), tr("mains, mm"));
    measure(m_crossesSpan, tr("From the first cross to the last"), tr("crosses, mm"));
    name(m_throat, tr("Throat"));
    name(m_side, tr("Side of the short side"));
    measure(m_reason, tr("Why that side"), tr("why"));
    name(m_mark, tr("What left and right refer to"));
    name(m_crossesStart, tr("Where crosses may start"));
    name(m_note, tr("Note for the bench"));
    m_lowest->setMayBeBlank(true);
    m_highest->setMayBeBlank(true);

    m_nameLine = m_sheet->addLine(tr("&Frame"), {m_name, m_sport});
    m_patternLine = m_sheet->addLine(tr("&Pattern"), {m_pattern, m_start});
    m_markedLine = m_sheet->addLine(tr("&Marked"), {m_lowest, m_highest});
    m_headLine = m_sheet->addLine(tr("&Head"), {m_length, m_width, m_size});
    m_finerLine = m_sheet->addLine(tr("F&iner"), {m_outermostMain, m_lastCross, m_wall});
    m_spanLine = m_sheet->addLine(tr("&Spans"), {m_mainsSpan, m_crossesSpan, m_throat});
    m_sideLine = m_sheet->addLine(tr("Short si&de"), {m_side, m_reason});
    m_markLine = m_sheet->addLine(tr("M&ounted"), {m_mark, m_crossesStart});
    m_noteLine = m_sheet->addLine(tr("&Note"), m_note);
    m_patternLine.note->watch(m_pattern);
    for (auto* edit : {m_lowest, m_highest}) {
        m_markedLine.note->watch(edit);
    }
    m_headLine.note->watch(m_length);
    m_headLine.note->watch(m_width);
    m_headLine.note->watch(m_size);
    for (auto* edit : {m_outermostMain, m_lastCross, m_wall}) {
        m_finerLine.note->watch(edit);
    }
    for (auto* edit : {m_mainsSpan, m_crossesSpan}) {
        m_spanLine.note->watch(edit);
    }
    connect(m_side, &QComboBox::currentIndexChanged, this, &FrameSheet::showSide);
}

QList<Sheet::Line> FrameSheet::lines() const {
    return {m_nameLine, m_patternLine, m_markedLine, m_headLine, m_finerLine,
            m_spanLine, m_sideLine,    m_markLine,   m_noteLine};
}

void FrameSheet::showSide() { m_reason->setEnabled(chosen<Side>(m_side).has_value()); }

void FrameSheet::start(const FrameModel& frame, TensionUnit unit) {
    m_frame = frame;
    const auto choose = [](QComboBox* choice, const QVariant& value) {
        choice->setCurrentIndex(choice->findData(value));
    };
    m_name->setText(fromUtf8(frame.name));
    choose(m_sport, static_cast<int>(frame.sport));
    m_pattern->setText(frame.id ? QStringLiteral("%1 x %2").arg(frame.pattern.mains).arg(frame.pattern.crosses)
                                : QString());
    choose(m_start, dataOf(frame.pattern.mainsStart));
    m_lowest->setDefaultUnit(unit);
    m_highest->setDefaultUnit(unit);
    m_lowest->setValue(frame.marked.lowest);
    m_highest->setValue(frame.marked.highest);
    m_length->setValue(frame.hoop.lengthMm);
    m_width->setValue(frame.hoop.widthMm);
    m_size->setValue(frame.hoop.headAreaCm2);
    m_outermostMain->setValue(frame.hoop.outermostMainMm);
    m_lastCross->setValue(frame.hoop.lastCrossMm);
    m_wall->setValue(frame.hoop.wallMm);
    m_mainsSpan->setValue(frame.pattern.mainsSpanMm);
    m_crossesSpan->setValue(frame.pattern.crossesSpanMm);
    choose(m_throat, frame.hoop.openThroat);
    const auto& forced = frame.note.forcedSide;
    choose(m_side, forced ? static_cast<int>(forced->side) : kUnknown);
    m_reason->setText(forced ? fromUtf8(forced->reason) : QString());
    m_mark->setText(fromUtf8(frame.note.mountingMark));
    choose(m_crossesStart, frame.note.crossesFromThroatAllowed);
    m_note->setText(fromUtf8(frame.note.text));
    showSide();
    for (const auto& line : lines()) {
        line.note->clearAll();
    }
    m_patternLine.note->setNote(tr("mains and crosses, as 16 x 19"));
    m_markedLine.note->setNote(tr("above it a yes is asked for"));
    m_headLine.note->setNote(tr("inside the hoop; below 200 the size is in square inches. Blank: not known"));
    m_finerLine.note->setNote(tr("inside the hoop, along these strings"));
    m_spanLine.note->setNote(tr("between the outermost strings"));
    m_sideLine.note->setNote(tr("where the frame itself forces it, and why"));
    m_markLine.note->setNote(tr("left and right are told with this up"));
    m_noteLine.note->setNote(tr("stands on the card. Enter keeps it all, Esc goes back"));
    m_name->setFocus(Qt::OtherFocusReason);
    m_name->selectAll();
}

Hoop FrameSheet::hoop() const {
    Hoop hoop = m_frame->hoop;
    hoop.lengthMm = m_length->readable();
    hoop.widthMm = m_width->readable();
    hoop.headAreaCm2 = m_size->readable();
    hoop.outermostMainMm = m_outermostMain->readable();
    hoop.lastCrossMm = m_lastCross->readable();
    hoop.wallMm = m_wall->readable();
    hoop.openThroat = m_throat->currentData().toBool();
    return hoop;
}

Pattern FrameSheet::pattern() const {
    Pattern pattern = m_frame->pattern;
    const auto counted = m_pattern->value();
    pattern.mains = counted->mains;
    pattern.crosses = counted->crosses;
    pattern.mainsStart = chosen<HoopEnd>(m_start);
    pattern.mainsSpanMm = m_mainsSpan->readable();
    pattern.crossesSpanMm = m_crossesSpan->readable();
    return pattern;
}

BenchNote FrameSheet::note() const {
    BenchNote note = m_frame->note;
    const auto side = chosen<Side>(m_side);
    note.forcedSide = side ? std::optional(ForcedSide{*side, m_reason->text().toStdString()}) : std::nullopt;
    note.mountingMark = m_mark->text().toStdString();
    note.crossesFromThroatAllowed = m_crossesStart->currentData().toBool();
    note.text = m_note->text().toStdString();
    return note;
}

std::optional<FrameModel> FrameSheet::frame() {
    for (const auto& line : lines()) {
        line.note->setProblem({});
    }
    const std::initializer_list<std::pair<ValueEdit*, MarginNote*>> edits = {
        {m_pattern, m_patternLine.note},     {m_lowest, m_markedLine.note},   {m_highest, m_markedLine.note},
        {m_length, m_headLine.note},         {m_width, m_headLine.note},      {m_size, m_headLine.note},
        {m_outermostMain, m_finerLine.note}, {m_lastCross, m_finerLine.note}, {m_wall, m_finerLine.note},
        {m_mainsSpan, m_spanLine.note},      {m_crossesSpan, m_spanLine.note}};
    for (const auto& [edit, note] : edits) {
        if (edit->problem()) {
            note->sendBackTo(edit);
            return std::nullopt;
        }
    }
    FrameModel frame = *m_frame;
    frame.name = m_name->text().toStdString();
    frame.sport = static_cast<Sport>(m_sport->currentData().toInt());
    frame.pattern = pattern();
    frame.marked = {m_lowest->readable(), m_highest->readable()};
    frame.hoop = hoop();
    frame.note = note();
    return frame;
}

void FrameSheet::showRefusal(const Refusal& why) {
    showBeside(why,
               {{"frame", m_name, m_nameLine.note},
                {"pattern", m_pattern, m_patternLine.note},
                {"pattern.mains", m_pattern, m_patternLine.note},
                {"pattern.crosses", m_pattern, m_patternLine.note},
                {"marked range", m_lowest, m_markedLine.note},
                {"hoop.lengthMm", m_length, m_headLine.note},
                {"hoop.widthMm", m_width, m_headLine.note},
                {"hoop.headAreaCm2", m_size, m_headLine.note},
                {"hoop.outermostMainMm", m_outermostMain, m_finerLine.note},
                {"hoop.lastCrossMm", m_lastCross, m_finerLine.note},
                {"hoop.wallMm", m_wall, m_finerLine.note},
                {"pattern.mainsSpanMm", m_mainsSpan, m_spanLine.note},
                {"pattern.crossesSpanMm", m_crossesSpan, m_spanLine.note},
                {"reason", m_reason, m_sideLine.note},
                {"mounting mark", m_mark, m_markLine.note},
                {"bench note", m_note, m_noteLine.note}},
               m_nameLine.note);
}

} // namespace rw::ui
