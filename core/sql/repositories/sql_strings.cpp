// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_strings.h"

#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"
#include "core/sql/repositories/stale_row.h"

namespace rw::sql {

namespace {
StringArticle articleIn(const Statement& statement) {
    const Row row(statement, "string_article");
    return {.id = row.id<StringArticleId>(),
            .code = row.text("code"),
            .name = row.text("name"),
            .colour = row.text("colour"),
            .sport = row.oneOf("sport", sportFromText),
            .material = row.oneOf("material", materialFromText),
            .diameterMicrometres = row.number("diameter_um"),
            .gaugeName = row.text("gauge_name"),
            .milligramsPerMetre = row.optionalWide("milligrams_per_metre"),
            .stretchPercent = row.optionalReal("stretch_percent"),
            .retired = row.flag("retired"),
            .version = row.wide("row_version"),
            .packet = row.optionalLength("packet_mm")};
}

/// All that may change.
void bindFacts(Statement& statement, const StringArticle& article) {
    statement.bind(":name", article.name);
    statement.bind(":colour", article.colour);
    statement.bind(":sport", sportText(article.sport));
    statement.bind(":material", materialText(article.material));
    statement.bind(":diameter_um", article.diameterMicrometres);
    statement.bind(":gauge_name", article.gaugeName);
    statement.bind(":milligrams_per_metre", article.milligramsPerMetre);
    statement.bind(":stretch_percent", article.stretchPercent);
    statement.bind(":retired", stored(article.retired));
    statement.bind(":packet_mm", stored(article.packet));
}
} // namespace

StringArticleId SqlStrings::add(const StringArticle& article) {
    Statement statement(m_connection, "add_string_article");
    statement.bind(":code", article.code);
    bindFacts(statement, article);
    statement.run();
    return StringArticleId::of(statement.insertedId());
}

Result<void> SqlStrings::update(const StringArticle& article) {
    Statement statement(m_connection, "update_string_article");
    statement.bind(":article", stored(*article.id));
    statement.bind(":version", article.version);
    bindFacts(statement, article);
    statement.run();
    if (statement.rowsAffected() > 0) {
        return {};
    }
    return staleRow("string", article, get(*article.id));
}

std::optional<StringArticle> SqlStrings::get(StringArticleId id) {
    Statement statement(m_connection, "get_string_article");
    statement.bind(":article", stored(id));
    statement.run();
    return statement.next() ? std::optional(articleIn(statement)) : std::nullopt;
}

std::vector<StringArticle> SqlStrings::all() {
    Statement statement(m_connection, "list_string_articles");
    statement.run();
    std::vector<StringArticle> articles;
    while (statement.next()) {
        articles.push_back(articleIn(statement));
    }
    return articles;
}

} // namespace rw::sql
