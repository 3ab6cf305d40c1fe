// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/prices_presenter.h"

#include "core/desk/settings.h"

#include <algorithm>

namespace rw::ui {

namespace {
/// A list that was written, with all of them as they are then.
struct Written {
    PriceList list;
    std::vector<desk::DatedPrices> lists;
};
Result<Written> written(desk::Transaction& ledger, const Result<PriceList>& list, Instant now) {
    if (!list) {
        return tl::unexpected<Refusal>(list.error());
    }
    auto lists = desk::datedPrices(ledger, now);
    if (!lists) {
        return tl::unexpected<Refusal>(lists.error());
    }
    return Written{*list, std::move(*lists)};
}

/// A line that is for one string stands in the row of the string.
bool hasOwnRow(const PriceLine& line) { return !line.article; }
} // namespace

PricesPresenter::PricesPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : SetUpPresenter(runner, shift, parent) {}

void PricesPresenter::load() {
    struct Found {
        std::vector<desk::DatedPrices> lists;
        std::vector<StringArticle> strings;
        CivilDate today;
    };
    show(
        [now = shift().now()](desk::Transaction& ledger) -> Result<Found> {
            auto lists = desk::datedPrices(ledger, now);
            if (!lists) {
                return tl::unexpected<Refusal>(lists.error());
            }
            return Found{std::move(*lists), ledger.strings().all(), desk::today(ledger.shop(), now)};
        },
        [this](Found found) {
            m_lists = std::move(found.lists);
            m_strings = std::move(found.strings);
            m_today = found.today;
        });
}

void PricesPresenter::choose(std::optional<std::int64_t> list) {
    m_chosen = list;
    Q_EMIT changed();
}

const desk::DatedPrices* PricesPresenter::chosen() const {
    const auto found =
        std::ranges::find_if(m_lists, [this](const desk::DatedPrices& dated) { return dated.list.id == m_chosen; });
    return found == m_lists.end() ? nullptr : &*found;
}

std::vector<PriceRow> PricesPresenter::rows() const {
    std::vector<PriceRow> rows;
    const auto* dated = chosen();
    if (dated == nullptr) {
        return rows;
    }
    const auto add = [&](bool extras) {
        for (const PriceLine& line : dated->list.lines) {
            if (hasOwnRow(line) && (line.kind == ChargeKind::Extra) == extras) {
                rows.push_back({line, std::nullopt});
            }
        }
    };
    add(false);
    for (const StringArticle& string : m_strings) {
        if (string.retired) {
            continue;
        }
        rows.push_back({std::nullopt, string, desk::pricesOf(dated->list, *string.id)});
    }
    add(true);
    return rows;
}

bool PricesPresenter::mayChange() const {
    const auto* dated = chosen();
    return dated != nullptr && dated->holds != desk::Holds::Past;
}

void PricesPresenter::showWritten(std::vector<desk::DatedPrices> lists, std::int64_t chosen) {
    m_lists = std::move(lists);
    m_chosen = chosen;
    Q_EMIT changed();
}

void PricesPresenter::begin(CivilDate from) {
    act(
        [from, now = shift().now()](desk::Transaction& ledger) {
            const auto list = desk::pricesToBegin(ledger, from);
            return written(ledger, list ? desk::addPriceList(ledger, *list, now) : list, now);
        },
        [this](const Written& done) {
            showWritten(done.lists, done.list.id);
            Q_EMIT begun(done.list);
        });
}

void PricesPresenter::change(const PriceList& seen, const PriceList& wanted) {
    act(
        [seen, wanted, now = shift().now()](desk::Transaction& ledger) {
            return written(ledger, desk::changePriceList(ledger, seen, wanted, now), now);
        },
        [this, before = seen.id](const Written& done) {
            showWritten(done.lists, done.list.id);
            Q_EMIT kept(done.list, done.list.id != before);
        });
}

void PricesPresenter::keepLine(const PriceList& seen, const std::optional<PriceLine>& insteadOf,
                               const PriceLine& line) {
    PriceList wanted = seen;
    desk::putLine(wanted, line, insteadOf);
    change(seen, wanted);
}

void PricesPresenter::takeOff(const PriceList& seen, const PriceLine& line) {
    PriceList wanted = seen;
    std::erase_if(wanted.lines, [&](const PriceLine& other) { return desk::isSameThing(line, other); });
    change(seen, wanted);
}

void PricesPresenter::keepString(const PriceList& seen, StringArticleId string, const desk::StringPrices& prices) {
    PriceList wanted = seen;
    desk::setPricesOf(wanted, string, prices);
    change(seen, wanted);
}

void PricesPresenter::keepTax(const PriceList& seen, TaxRule rule, int hundredthsPercent) {
    PriceList wanted = seen;
    wanted.taxRule = rule;
    for (PriceLine& line : wanted.lines) {
        line.taxHundredthsPercent = hundredthsPercent;
    }
    change(seen, wanted);
}

void PricesPresenter::drop(const PriceList& seen) {
    act([seen, now = shift().now()](desk::Transaction& ledger) { return desk::dropPriceList(ledger, seen, now); },
        [this] {
            m_chosen.reset();
            Q_EMIT dropped();
        });
}

} // namespace rw::ui
