// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/day_story.h"

#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/desk/counter.h"
#include "core/desk/demo_shop.h"
#include "core/desk/intake.h"
#include "core/desk/running_short.h"
#include "ui/text/format.h"
#include "ui/text/stock_words.h"

#include <algorithm>

namespace rw::cli {

namespace {
using desk::Transaction;
using std::chrono::minutes;

// What the story is about: she brings A and wants it two pounds looser than last time.
constexpr std::string_view kLastDigits = "0417";
constexpr std::string_view kMark = "A";
constexpr std::string_view kLooser = "-2";
constexpr std::string_view kBench = "Bench B"; // its dial is in kg
constexpr std::string_view kMainsSet = "23.5";
constexpr std::string_view kCrossesSet = "22.5";
constexpr std::string_view kCounterStaff = "Oriel Tamm";
constexpr std::string_view kStringer = "Bastian Quill";

template<class Row>
Result<Row> named(const std::vector<Row>& rows, std::string_view what, std::string_view name) {
    const auto found = std::ranges::find(rows, name, &Row::name);
    if (found == rows.end()) {
        return refuse(Code::NotFound, {{"what", std::string(what)}, {"text", std::string(name)}});
    }
    return *found;
}

class Story {
public:
    Story(ShopLedger& shop, Instant start)
        : m_shop(shop)
        , m_now(start) {}

    Result<Day> play() {
        return begin()
            .and_then([this] { return dropOff(); })
            .and_then([this] { return openCard(); })
            .and_then([this] { return cut(); })
            .and_then([this] { return finish(); })
            .and_then([this] { return handOver(); })
            .and_then([this] { return lookAtShelf(); })
            .map([this] {
                return Day{std::move(m_scenes), *std::move(m_card)};
            });
    }

private:
    using Step = tl::expected<void, Refusal>;

    void show(QString station, QString did, QStringList sees) {
        m_scenes.push_back({m_now, std::move(station), std::move(did), std::move(sees)});
    }
    By by(const desk::StaffMember& who, std::string_view station) const {
        return {*who.id, std::string(station), m_now};
    }

    Step begin() {
        auto stocked = m_shop.write([this](Transaction& t) { return desk::stockDemoShop(t, m_now); });
        if (!stocked) {
            return tl::unexpected(stocked.error());
        }
        m_reader = readerOf(m_shop);
        return m_shop.read([this](Transaction& t) -> Result<void> {
            const auto counter = named(t.shop().staff(), "member of staff", kCounterStaff);
            const auto stringer = named(t.shop().staff(), "member of staff", kStringer);
            const auto machine = named(t.shop().machines(), "machine", kBench);
            if (!counter || !stringer || !machine) {
                return tl::unexpected(!counter ? counter.error() : !stringer ? stringer.error() : machine.error());
            }
            m_counter = *counter;
            m_stringer = *stringer;
            m_machine = *machine;
            return {};
        });
    }

    Result<desk::RacketSummary> findRacket(Transaction& t) {
        const auto people = desk::findPeople(t, kLastDigits);
        if (!people) {
            return tl::unexpected(people.error());
        }
        for (const desk::PersonFound& person : *people) {
            for (const desk::RacketSummary& racket : person.rackets) {
                if (racket.racket.mark == kMark && racket.lastJob) {
                    m_customer = person.customer;
                    return racket;
                }
            }
        }
        return refuse(Code::NotFound, {{"what", "customer"}, {"text", std::string(kLastDigits)}});
    }

    /// As last time, each tension changed by what she says.
    static Result<desk::IntakeDraft> repeat(const desk::RacketSummary& racket) {
        const Job& last = *racket.lastJob;
        const auto looser = [](const Tension& old) { return Tension::tryParse(kLooser, old.unit(), old); };
        const auto mains = looser(last.asked.mains);
        const auto crosses = looser(last.asked.crosses);
        if (!mains || !crosses) {
            return tl::unexpected(!mains ? mains.error() : crosses.error());
        }
        const auto wanted = [](const JobPiece& piece) {
            return desk::WantedString{piece.article, piece.source, std::nullopt};
        };
        return desk::IntakeDraft{.frame = *racket.frame.id,
                                 .racket = racket.racket.id,
                                 .method = std::nullopt,
                                 .route = std::nullopt,
                                 .shortSide = std::nullopt,
                                 .mains = wanted(last.pieces.front()),
                                 .crosses =
                                     last.pieces.size() > 1 ? std::optional(wanted(last.pieces.back())) : std::nullopt,
                                 .tensions = {*mains, *crosses},
                                 .extras = {}};
    }

    Step dropOff() {
        return m_shop.write([this](Transaction& t) -> Result<void> {
            const auto racket = findRacket(t);
            if (!racket) {
                return tl::unexpected(racket.error());
            }
            m_racket = *racket->racket.id;
            const auto before = desk::historyOfRacket(t, *m_racket);
            const auto draft = repeat(*racket);
            if (!before || !draft) {
                return tl::unexpected(!before ? before.error() : draft.error());
            }
            const auto preview = desk::previewIntake(t, *draft, m_now);
            if (!preview) {
                return tl::unexpected(preview.error());
            }
            show(QStringLiteral("Counter"),
                 QStringLiteral("somebody is looked up by \"%1\"").arg(ui::fromUtf8(kLastDigits)),
                 historyLines(*m_customer, *before, m_reader));
            show(QStringLiteral("Counter"),
                 QStringLiteral("racket %1, as last time, two pounds looser")
                     .arg(printable(ui::fromUtf8(racket->racket.mark))),
                 intakeLines(*preview, draft->tensions, m_now, m_reader));
            const auto job = desk::logJob(t, {.requestKey = "the day's racket",
                                              .customer = *m_customer->id,
                                              .racket = *m_racket,
                                              .draft = *draft,
                                              .note = {},
                                              .promised = std::nullopt,
                                              .by = by(*m_counter, "counter")});
            if (!job) {
                return tl::unexpected(job.error());
            }
            m_job = *job->id;
            m_total = job->total;
            const auto queue = desk::benchQueue(t);
            if (!queue) {
                return tl::unexpected(queue.error());
            }
            m_now += minutes(2);
            show(QStringLiteral("Bench"), QStringLiteral("what is next, with job %1 logged").arg(job->number),
                 jobLines(*queue, m_reader));
            return {};
        });
    }

    Step openCard() {
        m_now += minutes(75);
        return m_shop.write([this](Transaction& t) -> Result<void> {
            const auto taken = desk::takeJob(t, {*m_job, *m_machine->id, by(*m_stringer, "bench")});
            if (!taken) {
                return tl::unexpected(taken.error());
            }
            const auto card = desk::jobCard(t, *m_job, m_machine->id);
            if (!card) {
                return tl::unexpected(card.error());
            }
            m_card = *card;
            show(QStringLiteral("Bench"),
                 QStringLiteral("%1 opens the job card at %2")
                     .arg(ui::fromUtf8(m_stringer->name), ui::fromUtf8(m_machine->name)),
                 cardLines(*card, m_reader));
            return {};
        });
    }

    Step cut() {
        m_now += minutes(4);
        return m_shop.write([this](Transaction& t) -> Result<void> {
            for (const desk::CardPiece& piece : m_card->pieces) {
                const auto done = desk::confirmCut(t, {.job = *m_job,
                                                       .role = piece.piece.role,
                                                       .attempt = piece.piece.current().number,
                                                       .lot = std::nullopt,
                                                       .length = piece.piece.planned,
                                                       .measuredLeft = std::nullopt,
                                                       .by = by(*m_stringer, "bench")});
                if (!done) {
                    return tl::unexpected(done.error());
                }
                if (!done->lot) {
                    continue;
                }
                m_lot = done->lot->id;
                show(QStringLiteral("Bench"),
                     QStringLiteral("%1 cut off %2")
                         .arg(ui::lengthText(piece.piece.planned, m_reader.locale),
                              printable(ui::fromUtf8(done->lot->tag))),
                     {QStringLiteral("the reel holds %1 now").arg(ui::heldText(done->lot->length, m_reader.locale))});
            }
            return {};
        });
    }

    Step finish() {
        m_now += minutes(22);
        const auto mains = Tension::tryParse(kMainsSet, m_machine->unit);
        const auto crosses = Tension::tryParse(kCrossesSet, m_machine->unit);
        if (!mains || !crosses) {
            return tl::unexpected(!mains ? mains.error() : crosses.error());
        }
        return m_shop.write([&](Transaction& t) -> Result<void> {
            const auto job = desk::finishJob(t, {.job = *m_job,
                                                 .strung = {*mains, *crosses},
                                                 .machine = *m_machine->id,
                                                 .note = {},
                                                 .by = by(*m_stringer, "bench")});
            const auto rack = desk::onTheRack(t);
            if (!job || !rack) {
                return tl::unexpected(!job ? job.error() : rack.error());
            }
            show(QStringLiteral("Bench"),
                 QStringLiteral("strung %1").arg(ui::tensionPairText({*mains, *crosses}, m_reader.locale)),
                 QStringList{QStringLiteral("on the rack:")} << jobLines(*rack, m_reader));
            return {};
        });
    }

    Step handOver() {
        m_now += minutes(95);
        return m_shop.write([this](Transaction& t) -> Result<void> {
            const auto job = desk::handOver(
                t, {.job = *m_job, .takenBy = {}, .payment = m_total, .way = "card", .by = by(*m_counter, "counter")});
            const auto history = desk::historyOfRacket(t, *m_racket);
            if (!job || !history) {
                return tl::unexpected(!job ? job.error() : history.error());
            }
            show(QStringLiteral("Counter"),
                 QStringLiteral("%1 pays %2 by card and takes her racket")
                     .arg(printable(ui::fromUtf8(m_customer->name)), ui::moneyText(*m_total, m_reader.locale)),
                 historyLines(*m_customer, *history, m_reader));
            return {};
        });
    }

    Step lookAtShelf() {
        m_now += minutes(5);
        return m_shop.read([this](Transaction& t) -> Result<void> {
            const auto strings = desk::shelfAhead(t, m_now);
            if (!strings) {
                return tl::unexpected(strings.error());
            }
            if (m_lot) {
                const auto life = desk::lotLife(t, *m_lot);
                if (!life) {
                    return tl::unexpected(life.error());
                }
                show(QStringLiteral("Stockroom"), QStringLiteral("what the reel knows"), lotLines(*life, 5, m_reader));
            }
            show(QStringLiteral("Stockroom"), QStringLiteral("what is left, promised and free"),
                 stockLines(*strings, m_reader));
            QStringList shortOf;
            for (const desk::ShelfString& string : *strings) {
                if (string.runningShort()) {
                    shortOf << QStringLiteral("▲ %1: %2")
                                   .arg(printable(ui::fromUtf8(string.article.name)), ui::runningShortText(string));
                }
            }
            show(QStringLiteral("Stockroom"), QStringLiteral("what runs short"),
                 shortOf.isEmpty() ? QStringList{QStringLiteral("nothing")} : shortOf);
            return {};
        });
    }

    ShopLedger& m_shop;
    Instant m_now;
    Reader m_reader;
    std::vector<Scene> m_scenes;
    // Each is known from the step on that finds it.
    std::optional<desk::StaffMember> m_counter;
    std::optional<desk::StaffMember> m_stringer;
    std::optional<desk::Machine> m_machine;
    std::optional<Customer> m_customer;
    std::optional<RacketId> m_racket;
    std::optional<JobId> m_job;
    std::optional<LotId> m_lot;
    std::optional<Money> m_total;
    std::optional<desk::JobCard> m_card;
};
} // namespace

Result<Day> playDay(ShopLedger& shop, Instant start) { return Story(shop, start).play(); }

} // namespace rw::cli
