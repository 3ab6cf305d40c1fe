// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::Frames over the open transaction of a connection, which must outlive it.
class SqlFrames final : public desk::Frames {
public:
    explicit SqlFrames(Connection& connection)
        : m_connection(connection) {}

    FrameModelId add(const FrameModel& frame) override;
    Result<void> update(const FrameModel& frame) override;
    [[nodiscard]] std::optional<FrameModel> get(FrameModelId id) override;
    [[nodiscard]] std::vector<FrameModel> find(std::string_view text, int atMost) override;
    void setUsualCut(const desk::UsualCut& cut) override;
    void dropUsualCut(const desk::UsualCut& cut) override;
    [[nodiscard]] std::vector<desk::UsualCut> usualCuts(FrameModelId frame) override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
