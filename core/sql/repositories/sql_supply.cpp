// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_supply.h"

#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"
#include "core/sql/repositories/stored_texts.h"

namespace rw::sql {

std::vector<desk::StringWish> SqlSupply::wishes(Instant since) {
    Statement statement(m_connection, "list_string_wishes");
    statement.bind(":since", stored(since));
    statement.run();
    std::vector<desk::StringWish> wishes;
    while (statement.next()) {
        const Row row(statement, "string_article", "article_id");
        wishes.push_back({.article = row.id<StringArticleId>("article_id"),
                          .at = row.instant("at"),
                          .halfBeds = row.number("half_beds")});
    }
    return wishes;
}

std::vector<desk::LastSupply> SqlSupply::lastSupplies() {
    Statement statement(m_connection, "list_last_supplies");
    statement.run();
    std::vector<desk::LastSupply> supplies;
    while (statement.next()) {
        const Row row(statement, "string_article", "article_id");
        const Currency currency = row.currency();
        supplies.push_back({.article = row.id<StringArticleId>("article_id"),
                            .kind = row.oneOf("kind", lotKindFromText),
                            .nominal = row.length("nominal_mm"),
                            .price = Money::fromMinor(row.wide("price_minor"), currency),
                            .shipping = Money::fromMinor(row.wide("shipping_minor"), currency),
                            .supplier = row.text("supplier"),
                            .parcelShipping = row.optionalMoney("parcel_minor", currency)});
    }
    return supplies;
}

void SqlSupply::add(const desk::AskedForNone& asked) {
    Statement statement(m_connection, "add_asked_for_none");
    statement.bind(":request_key", asked.requestKey);
    statement.bind(":article", stored(asked.article));
    bindBy(statement, asked.by);
    statement.run();
}

std::optional<StringArticleId> SqlSupply::askedForNoneByRequestKey(std::string_view key) {
    Statement statement(m_connection, "get_asked_for_none_by_request_key");
    statement.bind(":request_key", key);
    statement.run();
    return statement.next() ? std::optional(Row(statement, "asked_for_none").id<StringArticleId>("article_id"))
                            : std::nullopt;
}

} // namespace rw::sql
