// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_frames.h"

#include "core/customers/search_key.h"
#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"
#include "core/sql/repositories/search_words.h"
#include "core/sql/repositories/stale_row.h"
#include "core/sql/repositories/stored_texts.h"

#include <algorithm>
#include <cassert>

namespace rw::sql {

namespace {
Hoop hoopIn(const Row& row) {
    return {.lengthMm = row.optionalReal("hoop_length_mm"),
            .widthMm = row.optionalReal("hoop_width_mm"),
            .headAreaCm2 = row.optionalReal("head_area_cm2"),
            .openThroat = row.flag("open_throat"),
            .widestFromThroat = row.optionalReal("widest_from_throat"),
            .headExponent = row.optionalReal("head_exponent"),
            .throatExponent = row.optionalReal("throat_exponent"),
            .wallMm = row.optionalReal("wall_mm"),
            .outermostMainMm = row.optionalReal("outermost_main_mm"),
            .lastCrossMm = row.optionalReal("last_cross_mm")};
}

Pattern patternIn(const Row& row) {
    return {.mains = row.number("mains"),
            .crosses = row.number("crosses"),
            .mainsSpanMm = row.optionalReal("mains_span_mm"),
            .crossesSpanMm = row.optionalReal("crosses_span_mm"),
            .crossesCentreMm = row.optionalReal("crosses_centre_mm"),
            .spread = row.optionalReal("spread"),
            .mainsStart = row.optionalOneOf("mains_start", storedHoopEnd)};
}

BenchNote noteIn(const Row& row) {
    BenchNote note{.forcedSide = std::nullopt,
                   .mountingMark = row.text("mounting_mark"),
                   .crossesFromThroatAllowed = row.flag("crosses_from_throat"),
                   .text = row.text("note")};
    if (const auto side = row.optionalOneOf("forced_side", storedSide)) {
        note.forcedSide = ForcedSide{*side, row.text("forced_side_reason")};
    }
    return note;
}

FrameModel frameIn(const Statement& statement) {
    const Row row(statement, "frame_model");
    return {.id = row.id<FrameModelId>(),
            .name = row.text("name"),
            .sport = row.oneOf("sport", sportFromText),
            .hoop = hoopIn(row),
            .pattern = patternIn(row),
            .marked = {row.optionalTension("lowest"), row.optionalTension("highest")},
            .note = noteIn(row),
            .version = row.wide("row_version")};
}

void bindHoop(Statement& statement, const Hoop& hoop) {
    statement.bind(":hoop_length_mm", hoop.lengthMm);
    statement.bind(":hoop_width_mm", hoop.widthMm);
    statement.bind(":head_area_cm2", hoop.headAreaCm2);
    statement.bind(":open_throat", stored(hoop.openThroat));
    statement.bind(":widest_from_throat", hoop.widestFromThroat);
    statement.bind(":head_exponent", hoop.headExponent);
    statement.bind(":throat_exponent", hoop.throatExponent);
    statement.bind(":wall_mm", hoop.wallMm);
    statement.bind(":outermost_main_mm", hoop.outermostMainMm);
    statement.bind(":last_cross_mm", hoop.lastCrossMm);
}

void bindPattern(Statement& statement, const Pattern& pattern) {
    statement.bind(":mains", pattern.mains);
    statement.bind(":crosses", pattern.crosses);
    statement.bind(":mains_span_mm", pattern.mainsSpanMm);
    statement.bind(":crosses_span_mm", pattern.crossesSpanMm);
    statement.bind(":crosses_centre_mm", pattern.crossesCentreMm);
    statement.bind(":spread", pattern.spread);
    statement.bind(":mains_start", stored(pattern.mainsStart, hoopEndText));
}

void bindNote(Statement& statement, const BenchNote& note) {
    const auto& forced = note.forcedSide;
    statement.bind(":forced_side", forced ? std::optional(sideText(forced->side)) : std::nullopt);
    statement.bind(":forced_side_reason", forced ? std::string_view(forced->reason) : std::string_view());
    statement.bind(":mounting_mark", note.mountingMark);
    statement.bind(":crosses_from_throat", stored(note.crossesFromThroatAllowed));
    statement.bind(":note", note.text);
}

void bindFrame(Statement& statement, const FrameModel& frame) {
    statement.bind(":name", frame.name);
    statement.bind(":search_key", searchKey(frame.name));
    statement.bind(":sport", sportText(frame.sport));
    bindHoop(statement, frame.hoop);
    bindPattern(statement, frame.pattern);
    bindTension(statement, "lowest", frame.marked.lowest);
    bindTension(statement, "highest", frame.marked.highest);
    bindNote(statement, frame.note);
}
} // namespace

FrameModelId SqlFrames::add(const FrameModel& frame) {
    Statement statement(m_connection, "add_frame_model");
    bindFrame(statement, frame);
    statement.run();
    return FrameModelId::of(statement.insertedId());
}

Result<void> SqlFrames::update(const FrameModel& frame) {
    assert(frame.id);
    Statement change(m_connection, "update_frame_model");
    change.bind(":frame", stored(*frame.id));
    change.bind(":version", frame.version);
    bindFrame(change, frame);
    change.run();
    if (change.rowsAffected() == 0) {
        return staleRow("frame", frame, get(*frame.id));
    }
    return {};
}

std::optional<FrameModel> SqlFrames::get(FrameModelId id) {
    Statement statement(m_connection, "get_frame_model");
    statement.bind(":frame", stored(id));
    statement.run();
    return statement.next() ? std::optional(frameIn(statement)) : std::nullopt;
}

std::vector<FrameModel> SqlFrames::find(std::string_view text, int atMost) {
    const SearchWords words(text);
    Statement statement(m_connection, "find_frame_models");
    words.bindTo(statement, atMost);
    statement.run();
    std::vector<FrameModel> frames;
    while (std::ssize(frames) < atMost && statement.next()) {
        if (words.holdsRest(statement.text("search_key"))) {
            frames.push_back(frameIn(statement));
        }
    }
    return frames;
}

void SqlFrames::setUsualCut(const desk::UsualCut& cut) {
    Statement statement(m_connection, "set_usual_cut");
    statement.bind(":frame", stored(cut.frame));
    statement.bind(":role", pieceRoleText(cut.role));
    statement.bind(":material", stored(cut.material, materialText));
    statement.bind(":route", cut.route);
    statement.bind(":cut_mm", stored(cut.cut));
    statement.bind(":short_side_mm", stored(cut.shortSide));
    statement.run();
}

void SqlFrames::dropUsualCut(const desk::UsualCut& cut) {
    Statement statement(m_connection, "delete_usual_cut");
    statement.bind(":frame", stored(cut.frame));
    statement.bind(":role", pieceRoleText(cut.role));
    statement.bind(":material", cut.material ? materialText(*cut.material) : std::string_view());
    statement.bind(":route", cut.route);
    statement.run();
}

std::vector<desk::UsualCut> SqlFrames::usualCuts(FrameModelId frame) {
    Statement statement(m_connection, "list_usual_cuts_of_frame");
    statement.bind(":frame", stored(frame));
    statement.run();
    std::vector<desk::UsualCut> cuts;
    while (statement.next()) {
        const Row row(statement, "usual_cut");
        cuts.push_back({.frame = row.id<FrameModelId>("frame_model_id"),
                        .role = row.oneOf("role", pieceRoleFromText),
                        .material = row.optionalOneOf("material", materialFromText),
                        .route = row.text("route"),
                        .cut = row.length("cut_mm"),
                        .shortSide = row.optionalLength("short_side_mm")});
    }
    return cuts;
}

} // namespace rw::sql
