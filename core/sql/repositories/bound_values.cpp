// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/bound_values.h"

#include <string>

namespace rw::sql {

void bindTension(Statement& statement, std::string_view name, const std::optional<Tension>& tension) {
    const std::string start = ":" + std::string(name);
    if (tension) {
        statement.bind(start + "_hundredths", tension->hundredths());
        statement.bind(start + "_unit", unitText(tension->unit()));
    } else {
        statement.bind(start + "_hundredths", std::nullopt);
        statement.bind(start + "_unit", std::nullopt);
    }
}

void bindTensionPair(Statement& statement, const TensionPair& tensions) {
    bindTension(statement, "mains", tensions.mains);
    bindTension(statement, "crosses", tensions.crosses);
}

void bindBy(Statement& statement, const By& by) {
    statement.bind(":staff", stored(by.staff));
    statement.bind(":station", by.station);
    statement.bind(":at", stored(by.at));
}

} // namespace rw::sql
