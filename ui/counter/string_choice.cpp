// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/string_choice.h"

#include "ui/model/shelf_model.h"
#include "ui/text/format.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"

#include <QHBoxLayout>
#include <QSignalBlocker>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr qint64 kProposed = 0;      ///< the lot that the shop proposes
constexpr qint64 kCustomersSet = -1; ///< other values are ids of lots
} // namespace

StringChoice::StringChoice(First first, const QString& name, QWidget* parent)
    : QWidget(parent)
    , m_first(first)
    , m_string(new Choice(this))
    , m_source(new Choice(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(14);
    layout->addWidget(m_string, 3);
    layout->addWidget(m_source, 3);
    m_string->setAccessibleName(name);
    m_source->setAccessibleName(tr("%1: where from").arg(name));
    setFocusProxy(m_string);
    setStrings({});
    connect(m_string, &QComboBox::currentIndexChanged, this, [this] {
        fillSources(source(), std::nullopt);
        Q_EMIT chosen();
    });
    connect(m_source, &QComboBox::currentIndexChanged, this, [this] { Q_EMIT chosen(); });
}

void StringChoice::setStrings(const std::vector<desk::ShelfString>& strings) {
    const auto before = article();
    const auto from = source();
    const auto pinned = lot();
    m_strings = strings;
    {
        const QSignalBlocker quiet(m_string);
        m_string->clear();
        m_string->addItem(m_first == First::Alike ? tr("the same string") : QString(), qint64{0});
        for (const auto& string : m_strings) {
            m_string->addItem(articleTitle(string.article), qint64{string.article.id->value()});
        }
    }
    setChosen(before, from, pinned);
}

void StringChoice::setChosen(const std::optional<StringArticleId>& article, PieceSource source,
                             const std::optional<LotId>& lot) {
    {
        const QSignalBlocker quiet(m_string);
        const int row = article ? m_string->findData(qint64{article->value()}) : 0;
        m_string->setCurrentIndex(std::max(0, row));
    }
    fillSources(source, lot);
}

void StringChoice::setMains(const std::optional<StringArticleId>& article) {
    if (m_mains != article) {
        m_mains = article;
        fillSources(source(), lot());
    }
}

void StringChoice::fillSources(PieceSource source, const std::optional<LotId>& lot) {
    const QSignalBlocker quiet(m_source);
    m_source->clear();
    m_source->addItem(tr("off the shelf"), kProposed);
    if (const auto* chosen = string()) {
        for (const auto& there : chosen->lots) {
            m_source->addItem(tr("off %1, %2 left").arg(fromUtf8(there.lot.tag), heldText(there.lot.length)),
                              qint64{there.lot.id->value()});
        }
    }
    m_source->addItem(sourceWord(PieceSource::CustomersSet), kCustomersSet);
    const qint64 wanted = source == PieceSource::CustomersSet ? kCustomersSet : lot ? lot->value() : kProposed;
    m_source->setCurrentIndex(std::max(0, m_source->findData(wanted)));
}

std::optional<StringArticleId> StringChoice::article() const {
    const qint64 id = m_string->currentData().toLongLong();
    return id == 0 ? std::nullopt : std::optional(StringArticleId::of(id));
}

PieceSource StringChoice::source() const {
    return m_source->currentData().toLongLong() == kCustomersSet ? PieceSource::CustomersSet : PieceSource::ShopLot;
}

std::optional<LotId> StringChoice::lot() const {
    const qint64 id = m_source->currentData().toLongLong();
    return id > 0 ? std::optional(LotId::of(id)) : std::nullopt;
}

const desk::ShelfString* StringChoice::string() const {
    const auto id = article() ? article() : m_mains;
    const auto found = std::ranges::find_if(m_strings, [&](const auto& string) { return string.article.id == id; });
    return !id || found == m_strings.end() ? nullptr : &*found;
}

} // namespace rw::ui
