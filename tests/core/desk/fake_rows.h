// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace rw::desk::test {

/// Everything a ledger holds, as values: a transaction works on a copy, and to commit is to put the copy in place.
struct Rows {
    struct Note {
        JobId job;
        std::string words;
    };
    struct Telling {
        JobId job;
        std::string how;
        Instant at;
    };
    struct ToldTails {
        AttemptId attempt;
        TailsOf of;
    };
    std::vector<Customer> customers;
    std::vector<Racket> rackets;
    std::map<std::string, CustomerId, std::less<>> customersByKey;
    std::map<std::string, RacketId, std::less<>> racketsByKey;
    std::vector<FrameModel> frames;
    std::vector<UsualCut> usualCuts;
    std::vector<StringArticle> articles;
    std::vector<Lot> lots;
    std::map<std::string, DeliveryId, std::less<>> deliveriesByKey;
    std::vector<Delivery> deliveries;
    std::vector<Movement> movements;
    struct KnownWeight {
        LotId lot;
        SpoolWeight what;
        ScaleReading reading;
    };
    std::vector<KnownWeight> spoolWeights; ///< oldest first
    std::vector<KeptWeighing> weighings;   ///< without what was booked by them
    std::vector<std::pair<MovementId, WeighingId>> weighedMovements;
    std::vector<StockTake> stockTakes;
    std::vector<Job> jobs; ///< without what is derived
    std::vector<JobEvent> events;
    std::vector<std::pair<JobId, Payment>> payments;
    std::vector<std::pair<JobId, Consent>> consents;
    std::vector<std::pair<JobId, AskedChange>> askedChanges;
    std::vector<Telling> tellings;
    std::vector<ToldTails> tails; ///< oldest first
    std::vector<std::pair<JobId, Handover>> handovers; ///< oldest first
    std::map<JobId, Inspection> inspections;
    std::vector<PriceList> priceLists;
    std::vector<AskedForNone> askedForNone;
    std::map<std::string, std::string, std::less<>> settings;
    Currency currency = Currency::pounds();
    std::vector<StaffMember> staff;
    std::vector<Machine> machines;
    std::vector<LedgerTable> tables; ///< what goes out; a test puts them there
    std::int64_t lastId = 0;

    template<class AnyId>
    AnyId next() {
        return AnyId::of(++lastId);
    }
};

template<class AnyId>
std::optional<AnyId> idOf(const std::map<std::string, AnyId, std::less<>>& ids, std::string_view key) {
    const auto found = ids.find(key);
    return found == ids.end() ? std::nullopt : std::optional(found->second);
}

template<class Row, class AnyId>
Row* rowOf(std::vector<Row>& rows, AnyId id) {
    const auto found = std::ranges::find(rows, std::optional(id), &Row::id);
    return found == rows.end() ? nullptr : &*found;
}

template<class Row, class AnyId>
std::optional<Row> copyOf(std::vector<Row>& rows, AnyId id) {
    const Row* row = rowOf(rows, id);
    return row == nullptr ? std::nullopt : std::optional(*row);
}

} // namespace rw::desk::test
