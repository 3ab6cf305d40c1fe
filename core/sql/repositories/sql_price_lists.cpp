// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_price_lists.h"

#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"
#include "core/sql/repositories/stored_texts.h"

#include <cassert>

namespace rw::sql {

namespace {
PriceLine lineIn(const Statement& statement, Currency currency) {
    const Row row(statement, "price_line");
    return {.kind = row.oneOf("kind", chargeKindFromText),
            .sport = row.optionalOneOf("sport", sportFromText),
            .method = row.optionalOneOf("method", methodFromText),
            .article = row.optionalId<StringArticleId>("article_id"),
            .label = row.text("label"),
            .amount = Money::fromMinor(row.wide("amount_minor"), currency),
            .taxHundredthsPercent = row.number("tax_hundredths_percent"),
            .cost = row.optionalMoney("cost_minor", currency)};
}
} // namespace

void SqlPriceLists::add(const PriceList& list) {
    Statement head(m_connection, "add_price_list");
    head.bind(":valid_from", dateText(list.validFrom));
    head.bind(":currency", list.currency.code());
    head.bind(":tax_rule", taxRuleText(list.taxRule));
    head.run();
    addLines(head.insertedId(), list);
}

void SqlPriceLists::replaceLines(const PriceList& list) {
    removeLines(list.id);
    addLines(list.id, list);
    Statement rule(m_connection, "set_price_list_tax_rule");
    rule.bind(":price_list", list.id);
    rule.bind(":tax_rule", taxRuleText(list.taxRule));
    rule.run();
}

void SqlPriceLists::remove(std::int64_t list) {
    removeLines(list);
    Statement gone(m_connection, "delete_price_list");
    gone.bind(":price_list", list);
    gone.run();
}

void SqlPriceLists::removeLines(std::int64_t list) {
    Statement gone(m_connection, "delete_price_lines");
    gone.bind(":price_list", list);
    gone.run();
}

void SqlPriceLists::addLines(std::int64_t id, const PriceList& list) {
    std::int64_t number = 0;
    for (const PriceLine& line : list.lines) {
        assert(line.amount.currency() == list.currency);
        assert(!line.cost || line.cost->currency() == list.currency);
        addLine(id, ++number, line);
    }
}

void SqlPriceLists::addLine(std::int64_t list, std::int64_t number, const PriceLine& line) {
    Statement statement(m_connection, "add_price_line");
    statement.bind(":price_list", list);
    statement.bind(":line", number);
    statement.bind(":kind", chargeKindText(line.kind));
    statement.bind(":sport", stored(line.sport, sportText));
    statement.bind(":method", stored(line.method, methodText));
    statement.bind(":article", stored(line.article));
    statement.bind(":label", line.label);
    statement.bind(":amount_minor", line.amount.minor());
    statement.bind(":tax_hundredths_percent", line.taxHundredthsPercent);
    statement.bind(":cost_minor", line.cost ? std::optional(line.cost->minor()) : std::nullopt);
    statement.run();
}

std::optional<PriceList> SqlPriceLists::validOn(CivilDate date) {
    Statement head(m_connection, "get_price_list_valid_on");
    head.bind(":date", dateText(date));
    head.run();
    return head.next() ? std::optional(listIn(head)) : std::nullopt;
}

std::vector<PriceList> SqlPriceLists::all() {
    Statement heads(m_connection, "list_price_lists");
    heads.run();
    std::vector<PriceList> lists;
    while (heads.next()) {
        lists.push_back(listIn(heads));
    }
    return lists;
}

PriceList SqlPriceLists::listIn(const Statement& head) {
    const Row row(head, "price_list");
    PriceList list{.id = row.wide("id"),
                   .validFrom = row.date("valid_from"),
                   .currency = row.currency(),
                   .taxRule = row.oneOf("tax_rule", taxRuleFromText),
                   .lines = {}};
    Statement lines(m_connection, "list_price_lines");
    lines.bind(":price_list", list.id);
    lines.run();
    while (lines.next()) {
        list.lines.push_back(lineIn(lines, list.currency));
    }
    return list;
}

} // namespace rw::sql
