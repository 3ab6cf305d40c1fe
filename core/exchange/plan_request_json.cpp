// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plan_json.h"

#include "core/exchange/strict_json.h"

#include <array>
#include <map>
#include <set>
#include <utility>

namespace rw::exchange {

namespace {
using std::string_view;

constexpr std::array<string_view, 7> kTopKeys{"lots",          "pieces",   "pieceMix", "shortestUsefulMm",
                                              "waitingCostMm", "sameReel", "limitMs"};
constexpr std::array<string_view, 8> kLotKeys{"id",    "lengthMm", "uncertaintyMm", "gapMm",
                                              "owner", "pinnedTo", "sealed",        "received"};
constexpr std::array<string_view, 4> kPieceKeys{"id", "lengthMm", "job", "owner"};
constexpr std::array<string_view, 2> kShareKeys{"lengthMm", "share"};

constexpr std::size_t kMostEntries = 500;
constexpr std::size_t kMostShares = 6'000;
constexpr Length kNone = Length::fromMillimetres(0);
constexpr Length kShortest = Length::fromMillimetres(1);
constexpr Length kLongest = Length::fromMillimetres(1'000'000);
constexpr int kMostLimitMs = 60'000;

/// Names of a file as ids, the same name the same id.
template<class Id>
class Numbered {
public:
    Id operator()(const std::string& name) {
        return Id::of(m_ids.try_emplace(name, static_cast<std::int64_t>(m_ids.size()) + 1).first->second);
    }

private:
    std::map<std::string, std::int64_t> m_ids;
};

class RequestReader {
public:
    explicit RequestReader(const QJsonObject& object)
        : m_in(object, "", kTopKeys) {}

    Result<PlanRequest> read() {
        for (const string_view key : {"lots", "pieces", "pieceMix", "shortestUsefulMm"}) {
            m_in.need(key);
        }
        m_in.objects("lots", kLotKeys, kMostEntries, [this](JsonObjectReader& in) { readLot(in); });
        m_in.objects("pieces", kPieceKeys, kMostEntries, [this](JsonObjectReader& in) { readPiece(in); });
        std::vector<stock::PieceMix::Share> shares;
        m_in.objects("pieceMix", kShareKeys, kMostShares, [&](JsonObjectReader& in) { readShare(in, shares); });
        if (m_in.result() && shares.empty()) {
            m_in.refuseValue("pieceMix", "nothing", "at least one length with a share above 0");
        }
        Length shortestUseful = kNone;
        m_in.length("shortestUsefulMm", kNone, stock::RemnantValue::kConstantFrom, shortestUseful);
        Length waitingCost = stock::RemnantValue::kUsualWaitingCost;
        m_in.length("waitingCostMm", kNone, stock::RemnantValue::kConstantFrom, waitingCost);
        stock::QueueRules rules{.sameReel = false};
        m_in.yesNo("sameReel", rules.sameReel);
        double limitMs = static_cast<double>(rules.limit.count());
        m_in.numberWithin("limitMs", 0, kMostLimitMs, limitMs);
        if (!m_in.result()) {
            return tl::unexpected(m_in.result().error());
        }
        rules.limit = std::chrono::milliseconds(static_cast<std::int64_t>(limitMs));
        return PlanRequest{.lots = std::move(m_lots),
                           .lotNames = std::move(m_lotNames),
                           .uncertaintiesMm = std::move(m_uncertaintiesMm),
                           .pieces = std::move(m_pieces),
                           .pieceNames = std::move(m_pieceNames),
                           .mix = stock::PieceMix::of(std::move(shares)),
                           .shortestUseful = shortestUseful,
                           .waitingCost = waitingCost,
                           .rules = rules};
    }

private:
    /// The id of one more lot or piece.
    static void readId(JsonObjectReader& in, std::vector<Label>& names, std::set<std::string>& known) {
        std::optional<Label> id;
        in.need("id");
        in.label("id", id);
        if (!in.result()) {
            return;
        }
        if (!id) {
            in.refuseValue("id", "null", "text in quotes or a whole number");
        } else if (!known.insert(id->text).second) {
            in.refuseValue("id", id->text, "an id that stands only once");
        } else {
            names.push_back(*id);
        }
    }

    void readOwner(JsonObjectReader& in, std::optional<CustomerId>& owner) {
        std::optional<Label> name;
        in.label("owner", name);
        if (name && name->text != "shop") {
            owner = m_owner(name->text);
        }
    }

    void readLot(JsonObjectReader& in) {
        stock::QueueLot lot{.source = {.length = kNone}, .owner = std::nullopt, .pinnedTo = std::nullopt};
        double uncertaintyMm = 0;
        std::optional<Label> job;
        std::optional<Instant> received;
        readId(in, m_lotNames, m_lotsKnown);
        in.need("lengthMm");
        in.length("lengthMm", kNone, kLongest, lot.source.length);
        in.numberWithin("uncertaintyMm", 0, static_cast<double>(kLongest.millimetres()), uncertaintyMm);
        in.length("gapMm", kNone, kLongest, lot.source.gap);
        readOwner(in, lot.owner);
        in.label("pinnedTo", job);
        in.yesNo("sealed", lot.source.sealed);
        in.moment("received", received);
        if (job) {
            lot.pinnedTo = m_job("job " + job->text);
        }
        lot.source.received = received.value_or(lot.source.received);
        m_lots.push_back(lot);
        m_uncertaintiesMm.push_back(uncertaintyMm);
    }

    void readPiece(JsonObjectReader& in) {
        stock::QueuePiece piece{.length = kShortest, .job = m_job({}), .owner = std::nullopt};
        std::optional<Label> job;
        readId(in, m_pieceNames, m_piecesKnown);
        in.need("lengthMm");
        in.length("lengthMm", kShortest, kLongest, piece.length);
        in.label("job", job);
        readOwner(in, piece.owner);
        piece.job = job ? m_job("job " + job->text) : m_job("alone " + std::to_string(m_pieces.size()));
        m_pieces.push_back(piece);
    }

    static void readShare(JsonObjectReader& in, std::vector<stock::PieceMix::Share>& shares) {
        constexpr double kMostShare = 1e9;
        stock::PieceMix::Share share{.length = kShortest, .share = 0};
        in.need("lengthMm");
        in.need("share");
        in.length("lengthMm", kShortest, kLongest, share.length);
        in.numberWithin("share", 0, kMostShare, share.share);
        if (in.result() && share.share > 0) {
            shares.push_back(share);
        }
    }

    JsonObjectReader m_in;
    std::vector<stock::QueueLot> m_lots;
    std::vector<Label> m_lotNames;
    std::set<std::string> m_lotsKnown;
    std::vector<double> m_uncertaintiesMm;
    std::vector<stock::QueuePiece> m_pieces;
    std::vector<Label> m_pieceNames;
    std::set<std::string> m_piecesKnown;
    Numbered<JobId> m_job;
    Numbered<CustomerId> m_owner;
};
} // namespace

Result<PlanRequest> planRequestFromJson(std::string_view utf8) {
    const auto object = parseStrictObject(utf8);
    if (!object) {
        return tl::unexpected(object.error());
    }
    return RequestReader(*object).read();
}

} // namespace rw::exchange
