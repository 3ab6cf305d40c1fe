// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::Lots over the open transaction of a connection, which must outlive it.
class SqlLots final : public desk::Lots {
public:
    explicit SqlLots(Connection& connection)
        : m_connection(connection) {}

    LotId add(const Lot& lot) override;
    DeliveryId addDelivery(std::string_view requestKey, std::string_view supplier, const Money& shipping,
                           const By& by) override;
    [[nodiscard]] std::vector<LotId> ofDelivery(std::string_view requestKey) override;
    [[nodiscard]] std::optional<Delivery> delivery(DeliveryId id) override;
    [[nodiscard]] std::vector<std::string> suppliers() override;
    [[nodiscard]] std::optional<Lot> get(LotId id) override;
    [[nodiscard]] std::optional<Lot> byTag(std::string_view tag) override;
    [[nodiscard]] std::vector<Lot> open() override;
    [[nodiscard]] std::vector<Lot> open(StringArticleId article) override;
    [[nodiscard]] std::vector<Lot> closed(StringArticleId article) override;
    MovementId move(const Movement& movement) override;
    [[nodiscard]] std::vector<Movement> movements(LotId lot) override;
    void close(LotId lot, Instant at) override;
    void setKind(LotId lot, LotKind kind) override;
    void reopen(LotId lot) override;
    [[nodiscard]] std::vector<PlannedCut> plannedCuts() override;
    [[nodiscard]] std::vector<WaitingCut> waitingCuts(StringArticleId article) override;
    [[nodiscard]] std::vector<Length> lastTakesOff(StringArticleId article, int atMost) override;
    [[nodiscard]] std::vector<Length> lastTakesOff(Sport sport, int atMost) override;
    [[nodiscard]] std::optional<LotId> lastCutOn(MachineId machine) override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
