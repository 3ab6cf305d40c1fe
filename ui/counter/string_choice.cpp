// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/string_choice.h"

#include "ui/model/shelf_model.h"
#include "ui/text/format.h"
#include "ui/text/stockroom_words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/length_edit.h"

#include <QHBoxLayout>
#include <QSignalBlocker>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr qint64 kProposed = 0; ///< the lot that the shop proposes
constexpr qint64 kCustomersSet = -1;
constexpr qint64 kAsTheMains = -2; ///< other values are ids of lots
} // namespace

StringChoice::StringChoice(First first, const QString& name, QWidget* parent)
    : QWidget(parent)
    , m_first(first)
    , m_string(new Choice(this))
    , m_source(new Choice(this))
    , m_setLength(new LengthEdit(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(14);
    layout->addWidget(m_string, 3);
    layout->addWidget(m_source, 3);
    layout->addWidget(m_setLength, 1);
    m_setLength->setAccessibleName(tr("%1: length of the set").arg(name));
    m_setLength->setPlaceholderText(tr("its length, m"));
    m_setLength->setMayBeBlank(true);
    m_string->setAccessibleName(name);
    m_source->setAccessibleName(tr("%1: where from").arg(name));
    setFocusProxy(m_string);
    setStrings({});
    connect(m_string, &QComboBox::currentIndexChanged, this, [this] {
        fillSources(PieceSource::ShopLot, std::nullopt);
        Q_EMIT chosen();
    });
    connect(m_source, &QComboBox::currentIndexChanged, this, [this] {
        showSetLength();
        Q_EMIT chosen();
    });
    connect(m_setLength, &LengthEdit::valueChanged, this, &StringChoice::chosen);
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

void StringChoice::setOwnLots(const std::vector<Lot>& lots) {
    m_ownLots = lots;
    fillSources(source(), lot());
}

void StringChoice::setMains(const std::optional<StringArticleId>& article, PieceSource source) {
    if (m_mains != article || m_mainsSource != source) {
        const bool followed = m_source->currentData().toLongLong() == kAsTheMains;
        const auto from = followed ? source : this->source();
        const auto pinned = lot();
        m_mains = article;
        m_mainsSource = source;
        fillSources(from, pinned);
    }
}

qint64 StringChoice::entryFor(PieceSource source, const std::optional<LotId>& lot) const {
    if (lot) {
        return lot->value();
    }
    if (isAlike() && source == m_mainsSource) {
        return kAsTheMains;
    }
    if (source == PieceSource::CustomersLot && string() != nullptr) {
        const auto own = std::ranges::find(m_ownLots, *string()->article.id, &Lot::article);
        return own == m_ownLots.end() ? kProposed : own->id->value();
    }
    return source == PieceSource::CustomersSet ? kCustomersSet : kProposed;
}

void StringChoice::fillSources(PieceSource source, const std::optional<LotId>& lot) {
    const QSignalBlocker quiet(m_source);
    m_source->clear();
    if (isAlike()) {
        m_source->addItem(tr("as the mains"), kAsTheMains);
    }
    if (!isAlike() || m_mainsSource != PieceSource::ShopLot) {
        m_source->addItem(tr("off the shelf"), kProposed);
    }
    const auto addLot = [this](const QString& words, const Lot& there) {
        m_source->addItem(words.arg(fromUtf8(there.tag), heldText(there.length)), qint64{there.id->value()});
    };
    if (const auto* chosen = string()) {
        for (const auto& there : chosen->lots) {
            if (there.packets > 0) {
                m_source->addItem(packetChoiceText(there), qint64{there.lot.id->value()});
            } else {
                addLot(tr("off %1, %2 left"), there.lot);
            }
        }
        for (const Lot& own : m_ownLots) {
            if (own.article == chosen->article.id) {
                addLot(tr("customer's own %1, %2 left"), own);
            }
        }
    }
    m_source->addItem(tr("customer's own set"), kCustomersSet);
    m_source->setCurrentIndex(std::max(0, m_source->findData(entryFor(source, lot))));
    showSetLength();
}

void StringChoice::showSetLength() {
    const bool shown = m_source->currentData().toLongLong() == kCustomersSet;
    if (!shown) {
        m_setLength->clear();
    }
    m_setLength->setVisible(shown);
}

std::optional<StringArticleId> StringChoice::article() const {
    const qint64 id = m_string->currentData().toLongLong();
    return id == 0 ? std::nullopt : std::optional(StringArticleId::of(id));
}

PieceSource StringChoice::source() const {
    const qint64 entry = m_source->currentData().toLongLong();
    if (entry == kAsTheMains) {
        return m_mainsSource;
    }
    if (entry == kCustomersSet) {
        return PieceSource::CustomersSet;
    }
    const bool own = std::ranges::any_of(m_ownLots, [&](const Lot& lot) { return lot.id->value() == entry; });
    return own ? PieceSource::CustomersLot : PieceSource::ShopLot;
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
