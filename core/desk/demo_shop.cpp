// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/demo_shop.h"

#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/demo_data.h"
#include "core/desk/demo_days.h"
#include "core/desk/intake.h"
#include "core/desk/settings.h"
#include "core/desk/stockroom.h"

#include <algorithm>
#include <cassert>
#include <functional>
#include <map>

namespace rw::desk {

namespace {
using std::chrono::minutes;

/// The tables are ours: what they say is allowed, or the program has a bug.
template<class T>
T sure(Result<T> result) {
    assert(result.has_value());
    return *std::move(result);
}

Tension tension(std::string_view text) { return sure(Tension::tryParse(text, TensionUnit::Pound)); }

Length millimetres(int mm) { return Length::fromMillimetres(mm); }

std::optional<double> known(double value) { return value > 0 ? std::optional(value) : std::nullopt; }

bool isEmpty(Transaction& ledger) {
    return ledger.shop().staff().empty() && ledger.strings().all().empty() && ledger.customers().find("", 1).empty() &&
           ledger.frames().find("", 1).empty();
}

class Stocker {
public:
    Stocker(Transaction& ledger, Instant now)
        : m_ledger(ledger)
        , m_currency(ledger.shop().currency()) {
        setUpShop();
        m_days.emplace(workshopOf(ledger.shop(), readSettings(ledger.shop())), now);
    }

    void stock() {
        addStrings();
        addFrames();
        addPrices();
        addPeople();
        for (const demo::LotRow& row : demo::lots()) {
            at(row.openDaysAgo == 0 ? m_days->first() : m_days->at(row.openDaysAgo, 9 * 60 + 40),
               [this, &row](Instant when) { receive(row, when); });
        }
        m_ledger.shop().set(setting::kFirstJobNumber,
                            std::to_string(demo::kFirstOpenNumber - std::ssize(demo::pastJobs())));
        addPastJobs();
        addOpenJobs();
        at(m_days->at(8, 9 * 60 + 45), [this](Instant when) { measure("K-2", 6'400, when); });
        at(m_days->at(4, 9 * 60 + 45), [this](Instant when) { measure("L-2", 0, when); });
        perform();
    }

private:
    struct Step {
        Instant when;
        std::function<void(Instant)> what;
    };

    void at(Instant when, std::function<void(Instant)> what) { m_steps.push_back({when, std::move(what)}); }

    /// Everything in the order of its time, as it would have been written down.
    void perform() {
        std::ranges::stable_sort(m_steps, {}, &Step::when);
        for (const Step& step : m_steps) {
            step.what(step.when);
        }
    }

    Money money(int minor) { return Money::fromMinor(minor, m_currency); }
    By by(std::string_view name, std::string_view station, Instant when) {
        return {m_staff.at(name), std::string(station), when};
    }

    void setUpShop() {
        Shop& shop = m_ledger.shop();
        shop.set(setting::kShopName, "Harbour Lane Strings");
        shop.set(setting::kTimeZone, "Europe/London");
        shop.set(setting::kBadmintonCrosses, "2 lb");
        for (std::size_t day = 0; day < setting::kHours.size(); ++day) {
            shop.set(setting::kHours[day], day == 6 ? "" : "10:00-18:00");
        }
        for (const std::string_view name : demo::staff()) {
            const bool strings = name != demo::kCounterStaff && name != demo::kOwner;
            m_staff.emplace(name, shop.add(StaffMember{.id = {}, .name = std::string(name), .strings = strings}));
        }
        for (const demo::MachineRow& row : demo::machines()) {
            Machine machine{std::nullopt, std::string(row.name), row.unit, row.stepHundredths};
            machine.id = shop.add(machine);
            m_machines.emplace(row.name, machine);
        }
    }

    void addStrings() {
        for (const demo::StringRow& row : demo::strings()) {
            StringArticle article;
            article.code = row.code;
            article.name = row.name;
            article.colour = row.colour;
            article.sport = row.sport;
            article.material = row.material;
            article.diameterMicrometres = row.diameterMicrometres;
            article.gaugeName = row.gauge;
            article.milligramsPerMetre = row.milligramsPerMetre;
            article.id = m_ledger.strings().add(article);
            m_strings.emplace(row.code, article);
        }
    }

    void addFrames() {
        for (const demo::FrameRow& row : demo::frames()) {
            FrameModel frame;
            frame.name = row.name;
            frame.sport = row.sport;
            frame.hoop.lengthMm = known(row.lengthMm);
            frame.hoop.widthMm = known(row.widthMm);
            frame.hoop.headAreaCm2 = known(row.areaCm2);
            frame.hoop.openThroat = row.openThroat;
            frame.pattern.mains = row.mains;
            frame.pattern.crosses = row.crosses;
            frame.pattern.mainsSpanMm = known(row.mainsSpanMm);
            frame.pattern.crossesSpanMm = known(row.crossesSpanMm);
            frame.pattern.mainsStart = row.mainsStart;
            if (!row.lowest.empty()) {
                frame.marked.lowest = tension(row.lowest);
            }
            frame.marked.highest = tension(row.highest);
            if (!row.forcedRight.empty()) {
                frame.note.forcedSide = ForcedSide{Side::Right, std::string(row.forcedRight)};
            }
            m_frames.emplace(row.name, sure(addFrame(m_ledger, frame)));
        }
        for (const demo::UsualRow& row : demo::usualCuts()) {
            m_ledger.frames().setUsualCut(
                {.frame = m_frames.at(row.frame),
                 .role = row.role,
                 .material = row.string.empty() ? std::nullopt : std::optional(m_strings.at(row.string).material),
                 .route = std::string(row.route),
                 .cut = millimetres(row.cut),
                 .shortSide = row.shortSide == 0 ? std::nullopt : std::optional(millimetres(row.shortSide))});
        }
    }

    void addPrices() {
        PriceList list{.validFrom = localDate(m_days->hours(), m_days->first()), .currency = m_currency, .lines = {}};
        const auto line = [&](ChargeKind kind, int pence, std::string_view label = {},
                              std::optional<StringArticleId> article = std::nullopt) {
            list.lines.push_back({.kind = kind,
                                  .sport = std::nullopt,
                                  .method = std::nullopt,
                                  .article = article,
                                  .label = std::string(label),
                                  .amount = money(pence)});
        };
        line(ChargeKind::Labour, demo::kLabour);
        line(ChargeKind::OwnStringLabour, demo::kOwnStringLabour);
        line(ChargeKind::Rush, demo::kRush);
        line(ChargeKind::Extra, demo::kGrommetTube, "grommet tube");
        list.lines.back().cost = money(demo::kGrommetTubeCost);
        for (const demo::StringRow& row : demo::strings()) {
            line(ChargeKind::FullBed, row.fullBed, {}, m_strings.at(row.code).id);
            if (row.halfBed != 0) {
                line(ChargeKind::HalfBed, row.halfBed, {}, m_strings.at(row.code).id);
            }
        }
        m_ledger.priceLists().add(list);
    }

    void addPeople() {
        std::map<std::string_view, CustomerId> people;
        for (const demo::PersonRow& row : demo::people()) {
            Customer customer{std::nullopt, std::string(row.name), {}};
            if (!row.phone.empty()) {
                customer.contacts.push_back({Contact::Kind::Phone, std::string(row.phone)});
            }
            if (!row.email.empty()) {
                customer.contacts.push_back({Contact::Kind::Email, std::string(row.email)});
            }
            people.emplace(row.name, sure(addCustomer(m_ledger, {"demo-" + customer.name, customer})));
        }
        for (const demo::RacketRow& row : demo::rackets()) {
            Racket racket{std::nullopt, people.at(row.person), m_frames.at(row.frame), std::string(row.mark)};
            racket.id =
                sure(addRacket(m_ledger, {"demo-" + std::string(row.key), racket.customer, racket.frame, racket.mark}));
            m_rackets.emplace(row.key, racket);
        }
    }

    void receive(const demo::LotRow& row, Instant when) {
        if (!row.supplier.empty()) {
            sure(receiveDelivery(m_ledger, {.requestKey = "parcel with " + std::string(row.tag),
                                            .supplier = std::string(row.supplier),
                                            .lines = {{.article = *m_strings.at(row.string).id,
                                                       .nominal = millimetres(row.length),
                                                       .priceEach = money(row.price),
                                                       .batch = std::string(row.batch),
                                                       .tag = std::string(row.tag)}},
                                            .shipping = money(row.shipping),
                                            .by = by(demo::kOwner, "stockroom", when)}));
            return;
        }
        sure(receiveLot(m_ledger, {.tag = std::string(row.tag),
                                   .article = *m_strings.at(row.string).id,
                                   .owner = std::nullopt,
                                   .nominal = millimetres(row.length),
                                   .price = money(row.price),
                                   .shipping = money(row.shipping),
                                   .batch = std::string(row.batch),
                                   .by = by(demo::kOwner, "stockroom", when)}));
    }

    void measure(std::string_view tag, int left, Instant when) {
        const auto lot = m_ledger.lots().byTag(tag);
        sure(correctLot(m_ledger, {*lot->id, millimetres(left), by(demo::kOwner, "stockroom", when)}));
    }

    /// `reel`: the one that somebody chose at the counter, "" for none.
    JobId log(const demo::JobRow& row, std::string_view note, const std::optional<Instant>& promised, Instant when,
              std::string_view reel = {}) {
        const Racket& racket = m_rackets.at(row.racket);
        const auto chosen = reel.empty() ? std::nullopt : m_ledger.lots().byTag(reel)->id;
        const auto wanted = [&](std::string_view code) {
            return WantedString{*m_strings.at(code).id, PieceSource::ShopLot, chosen};
        };
        const IntakeDraft draft{.frame = racket.frame,
                                .racket = racket.id,
                                .method = row.method,
                                .route = std::nullopt,
                                .shortSide = std::nullopt,
                                .mains = wanted(row.mains),
                                .crosses = wanted(row.crosses),
                                .tensions = {tension(row.mainsTension), tension(row.crossesTension)},
                                .extras = {}};
        const auto job = sure(logJob(m_ledger, {.requestKey = "demo-" + std::to_string(++m_logged),
                                                .customer = racket.customer,
                                                .racket = *racket.id,
                                                .draft = draft,
                                                .note = std::string(note),
                                                .promised = promised,
                                                .by = by(demo::kCounterStaff, "counter", when)}));
        return *job.id;
    }

    void cut(JobId job, const demo::JobRow& row, const JobPiece& piece, int attempt, Length length, Instant when) {
        const bool crosses = piece.role == PieceRole::Crosses && !row.crossesLot.empty();
        const auto lot = m_ledger.lots().byTag(crosses ? row.crossesLot : row.mainsLot);
        sure(confirmCut(m_ledger, {.job = job,
                                   .role = piece.role,
                                   .attempt = attempt,
                                   .lot = lot->id,
                                   .length = length,
                                   .measuredLeft = std::nullopt,
                                   .by = by(row.stringer, "bench", when)}));
    }

    void string(JobId id, const demo::JobRow& row, Instant when) {
        const Machine& machine = m_machines.at(row.machine);
        const By stringer = by(row.stringer, "bench", when + minutes(24));
        const Job job = sure(takeJob(m_ledger, {id, *machine.id, by(row.stringer, "bench", when)}));
        for (const JobPiece& piece : job.pieces) {
            int attempt = 1;
            if (row.loss.cut != 0 && row.loss.role == piece.role) {
                cut(id, row, piece, attempt, millimetres(row.loss.cut), when + minutes(2));
                sure(loseLength(m_ledger, {id, piece.role, attempt++, row.loss.reason,
                                           by(row.stringer, "bench", when + minutes(3))}));
            }
            cut(id, row, piece, attempt, piece.planned, when + minutes(4));
        }
        const auto set = [&](const Tension& asked) {
            return dialSetting(asked, machine.unit, machine.stepHundredths).below;
        };
        sure(finishJob(
            m_ledger,
            {id, {set(job.asked.mains), set(job.asked.crosses)}, *machine.id, std::string(row.note), stringer}));
    }

    void collect(JobId id, bool byCard, Instant when) {
        const Job job = *m_ledger.jobs().get(id);
        sure(handOver(m_ledger,
                      {id, {}, job.total, byCard ? "card" : "cash", by(demo::kCounterStaff, "counter", when)}));
    }

    void addPastJobs() {
        const auto jobs = demo::pastJobs();
        for (std::size_t i = 0; i < jobs.size(); ++i) {
            const demo::JobRow& row = jobs[i];
            const JobTimes times = m_days->timesOf(row.openDaysAgo, row.minute);
            at(times.logged,
               [this, &row, i](Instant when) { m_jobs.insert_or_assign(i, log(row, {}, std::nullopt, when)); });
            at(times.strung, [this, &row, i](Instant when) { string(m_jobs.at(i), row, when); });
            if (i + demo::kOnTheRack < jobs.size()) {
                at(times.collected, [this, i](Instant when) { collect(m_jobs.at(i), i % 3 != 0, when); });
            }
        }
    }

    void addOpenJobs() {
        std::size_t ahead = 0;
        for (const demo::JobRow& row : demo::openJobs()) {
            const Instant promised = m_days->promise(ahead++);
            at(m_days->at(row.openDaysAgo, row.minute), [this, &row, promised](Instant when) {
                const JobId job = log(row, row.note, promised, when, row.mainsLot);
                if (!row.stringer.empty()) {
                    sure(takeJob(m_ledger, {job, *m_machines.at(row.machine).id, by(row.stringer, "bench", when)}));
                }
            });
        }
    }

    Transaction& m_ledger;
    Currency m_currency;
    std::optional<DemoDays> m_days;
    std::map<std::string_view, StaffId> m_staff;
    std::map<std::string_view, Machine> m_machines;
    std::map<std::string_view, StringArticle> m_strings;
    std::map<std::string_view, FrameModelId> m_frames;
    std::map<std::string_view, Racket> m_rackets;
    std::map<std::size_t, JobId> m_jobs; ///< by their place in the table of past jobs
    std::vector<Step> m_steps;
    int m_logged = 0;
};
} // namespace

Result<void> stockDemoShop(Transaction& ledger, Instant now) {
    if (!isEmpty(ledger)) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "ledger"}, {"text", "not empty"}, {"expected", "a ledger with nothing in it"}});
    }
    Stocker(ledger, now).stock();
    return {};
}

} // namespace rw::desk
