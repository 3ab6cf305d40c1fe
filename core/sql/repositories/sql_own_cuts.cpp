// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_own_cuts.h"

#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"

namespace rw::sql {

namespace {
std::optional<Tails> tailsIn(const Row& row, const char* low, const char* high) {
    return row.isNull(low) ? std::nullopt : std::optional(Tails{row.length(low), row.length(high)});
}

desk::OwnCut ownCutIn(const Statement& statement) {
    const Row row(statement, "movement");
    return {.job = row.id<JobId>("job_id"),
            .number = row.wide("number"),
            .frame = row.id<FrameModelId>("frame_model_id"),
            .at = row.instant("at"),
            .method = row.oneOf("method", methodFromText),
            .route = row.text("route"),
            .shortSide = row.optionalLength("short_side_mm"),
            .pulled = row.tensionPair(),
            .role = row.oneOf("role", pieceRoleFromText),
            .mains = row.id<StringArticleId>("mains_article_id"),
            .crosses = row.id<StringArticleId>("crosses_article_id"),
            .length = row.length("cut_mm"),
            .allThereWas = row.flag("all_there_was"),
            .cameShort = row.flag("came_short"),
            .tails = tailsIn(row, "low_mm", "high_mm"),
            .shortSideTails = tailsIn(row, "short_side_low_mm", "short_side_high_mm")};
}
} // namespace

void SqlOwnCuts::keepTails(AttemptId attempt, const TailsOf& tails, const By& by) {
    Statement statement(m_connection, "add_tails");
    statement.bind(":attempt", stored(attempt));
    statement.bind(":part", tailsPartText(tails.shortSide));
    statement.bind(":low_mm", stored(tails.tails.low));
    statement.bind(":high_mm", stored(tails.tails.high));
    bindBy(statement, by);
    statement.run();
}

std::vector<desk::OwnCut> SqlOwnCuts::cuts(FrameModelId frame, Sport sport, int jobs, int elsewhere) {
    Statement statement(m_connection, "list_own_cuts");
    statement.bind(":frame", stored(frame));
    statement.bind(":sport", sportText(sport));
    statement.bind(":jobs", jobs);
    statement.bind(":elsewhere", elsewhere);
    statement.run();
    std::vector<desk::OwnCut> cuts;
    while (statement.next()) {
        cuts.push_back(ownCutIn(statement));
    }
    return cuts;
}

} // namespace rw::sql
