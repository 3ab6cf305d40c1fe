// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/own_cuts.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::OwnCuts over the open transaction of a connection, which must outlive it.
class SqlOwnCuts final : public desk::OwnCuts {
public:
    explicit SqlOwnCuts(Connection& connection)
        : m_connection(connection) {}

    void keepTails(AttemptId attempt, const TailsOf& tails, const By& by) override;
    [[nodiscard]] std::vector<desk::OwnCut> cuts(FrameModelId frame, Sport sport, int jobs, int elsewhere) override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
