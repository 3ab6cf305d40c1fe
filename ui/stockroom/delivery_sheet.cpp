// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/delivery_sheet.h"

#include "ui/presenter/request_key.h"
#include "ui/text/sentences.h"
#include "ui/text/stockroom_words.h"
#include "ui/widgets/count_edit.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/look.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/mass_edit.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/refused_line.h"

#include <QCompleter>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace rw::ui {

namespace {
constexpr int kGridRowsEach = 2; ///< the editors and the note below them
constexpr std::array<int, 8> kStretch = {24, 6, 11, 10, 10, 10, 11, 14};

QLabel* quietLabel(const QString& words, QWidget* buddy, QWidget* parent) {
    auto* label = new QLabel(words, parent);
    quieten(*label);
    label->setBuddy(buddy);
    return label;
}
} // namespace

DeliverySheet::DeliverySheet(QWidget* parent)
    : QWidget(parent)
    , m_currency(Currency::pounds())
    , m_scroll(new QScrollArea(this))
    , m_paper(new QWidget(m_scroll))
    , m_grid(new QGridLayout(m_paper))
    , m_supplier(new QLineEdit(this))
    , m_shipping(new MoneyEdit(m_currency, this))
    , m_sum(new QLabel(this))
    , m_note(new MarginNote(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(28, 18, 28, 16);
    layout->setSpacing(12);
    auto* title = new QLabel(tr("String that came in"), this);
    title->setFont(largeFont(*this, 1.5));
    layout->addWidget(title);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(4);
    m_scroll->setWidget(m_paper);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    for (QWidget* under : QList<QWidget*>{m_paper, m_scroll->viewport()}) {
        under->setAutoFillBackground(true);
        under->setBackgroundRole(QPalette::Base);
    }
    layout->addWidget(m_scroll, 1);
    buildHeader();
    addRow();
    buildFoot();
}

void DeliverySheet::buildHeader() {
    const QStringList names{tr("string"),
                            tr("how many"),
                            tr("kind"),
                            tr("length each"),
                            tr("price each"),
                            tr("batch"),
                            tr("weight when new"),
                            tr("tags to write on them")};
    for (int column = 0; column < names.size(); ++column) {
        m_grid->addWidget(quietLabel(names[column], nullptr, m_paper), 0, column);
        m_grid->setColumnStretch(column, kStretch.at(static_cast<std::size_t>(column)));
    }
}

void DeliverySheet::buildFoot() {
    m_supplier->setAccessibleName(tr("Supplier"));
    m_supplier->setPlaceholderText(tr("who sent it"));
    m_shipping->setAccessibleName(tr("Shipping of the whole delivery"));
    m_shipping->setPlaceholderText(tr("nothing"));
    m_shipping->setMayBeBlank(true);
    QFont bold = m_sum->font();
    bold.setBold(true);
    m_sum->setFont(bold);
    m_sum->setAccessibleName(tr("What it comes to"));
    m_sum->setWordWrap(true);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(12);
    foot->addWidget(quietLabel(tr("&From"), m_supplier, this));
    foot->addWidget(m_supplier, 5);
    foot->addWidget(quietLabel(tr("&Shipping"), m_shipping, this));
    foot->addWidget(m_shipping, 2);
    foot->addWidget(m_sum, 7);
    auto* layout = static_cast<QVBoxLayout*>(this->layout());
    layout->addLayout(foot);
    layout->addWidget(m_note);
    setTabOrder(m_rows.front()->tag(), m_supplier);
    setTabOrder(m_supplier, m_shipping);
    m_note->watch(m_shipping);
    connect(m_shipping, &ValueEdit::valueChanged, this, &DeliverySheet::rowChanged);
}

void DeliverySheet::addRow() {
    const int number = static_cast<int>(m_rows.size());
    auto* row = new DeliveryRow(number + 1, m_grid, 1 + kGridRowsEach * number, m_paper);
    if (!m_rows.empty()) {
        // Made later, they would come behind the supplier otherwise.
        QWidget* before = m_rows.back()->tag();
        for (QWidget* editor : QList<QWidget*>{row->strings(), row->count(), row->kinds(), row->length(), row->price(),
                                               row->batch(), row->weight(), row->tag()}) {
            setTabOrder(before, editor);
            before = editor;
        }
        m_grid->setRowStretch(1 + kGridRowsEach * number, 0);
    }
    m_grid->setRowStretch(1 + kGridRowsEach * (number + 1), 1);
    row->start(m_strings, m_currency);
    m_rows.push_back(row);
    connect(row, &DeliveryRow::changed, this, &DeliverySheet::rowChanged);
}

void DeliverySheet::showRows(std::size_t count) {
    while (m_rows.size() < count) {
        addRow();
    }
    m_shown = count;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        m_rows[i]->setVisible(i < count);
    }
}

void DeliverySheet::start(const std::vector<desk::ShelfString>& strings, const std::optional<StringArticleId>& chosen,
                          const Currency& currency) {
    m_requestKey = newRequestKey();
    m_strings = strings;
    m_currency = currency;
    for (auto* row : m_rows) {
        row->start(strings, currency);
    }
    m_supplier->clear();
    m_shipping->setCurrency(currency);
    m_shipping->setValue(std::nullopt);
    m_note->clearAll();
    showRows(1);
    if (chosen) {
        m_rows.front()->choose(*chosen);
    }
    rowChanged();
    m_rows.front()->strings()->setFocus(Qt::OtherFocusReason);
}

void DeliverySheet::setSuppliers(const std::vector<std::string>& names) {
    QStringList list;
    for (const std::string& name : names) {
        list << QString::fromStdString(name);
    }
    auto* completer = new QCompleter(list, this);
    completer->setCompletionMode(QCompleter::InlineCompletion);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    m_supplier->setCompleter(completer);
}

std::vector<DeliveryRow*> DeliverySheet::written() const {
    std::vector<DeliveryRow*> rows;
    std::ranges::copy_if(m_rows, std::back_inserter(rows), [](const DeliveryRow* row) { return !row->isBlank(); });
    return rows;
}

void DeliverySheet::setTags(const std::vector<std::vector<std::string>>& tags) {
    const auto rows = written();
    for (std::size_t i = 0; i < std::min(rows.size(), tags.size()); ++i) {
        rows[i]->setTags(tagsText(tags[i]));
    }
}

std::vector<desk::DeliveryLine> DeliverySheet::sketch() const {
    std::vector<desk::DeliveryLine> lines;
    for (const DeliveryRow* row : written()) {
        lines.push_back(*row->sketch());
    }
    return lines;
}

void DeliverySheet::rowChanged() {
    if (!m_rows[m_shown - 1]->isBlank()) {
        showRows(m_shown + 1);
    }
    m_sum->setText(parcelText(sketch(), m_shipping->readable().value_or(Money::zero(m_currency))));
    Q_EMIT linesChanged();
}

std::optional<StockroomPresenter::Parcel> DeliverySheet::parcel() {
    m_note->setProblem({});
    const auto rows = written();
    if (rows.empty()) {
        m_note->setProblem(m_strings.empty() ? noStringYetText() : whichStringCameText());
        m_rows.front()->strings()->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    std::vector<desk::DeliveryLine> lines;
    for (DeliveryRow* row : rows) {
        const auto line = row->line();
        if (!line) {
            return std::nullopt;
        }
        lines.push_back(*line);
    }
    if (m_shipping->problem()) {
        m_note->sendBackTo(m_shipping);
        return std::nullopt;
    }
    return StockroomPresenter::Parcel{.requestKey = m_requestKey,
                                      .supplier = m_supplier->text(),
                                      .lines = std::move(lines),
                                      .shipping = m_shipping->readable().value_or(Money::zero(m_currency))};
}

void DeliverySheet::showRefusal(const Refusal& why) {
    const auto rows = written();
    const auto line = static_cast<std::size_t>(why.number("line"));
    if (!why.text("line").empty() && line < rows.size()) {
        rows[line]->showRefusal(why);
        return;
    }
    showBeside(why, {{"supplier", m_supplier, m_note}, {"shipping", m_shipping, m_note}}, m_note);
}

void DeliverySheet::paintEvent(QPaintEvent*) { paintPaper(*this); }

} // namespace rw::ui
