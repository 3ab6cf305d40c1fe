// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/harbour_lane.h"

#include "core/calendar/opening_hours.h"
#include "core/desk/counter.h"
#include "core/desk/settings.h"
#include "core/desk/stockroom.h"

#include <cmath>
#include <vector>

namespace rw::stories {

namespace {
using namespace std::chrono_literals;

constexpr std::string_view kZone = "Europe/London";

void setHours(desk::Shop& shop) {
    shop.set(desk::setting::kTimeZone, kZone);
    shop.set(desk::setting::kBadmintonCrosses, "2 lb");
    for (std::size_t day = 0; day < 7; ++day) {
        shop.set(desk::setting::kHours[day], day < 6 ? "10:00-18:00" : "");
    }
}

StringArticleId addString(desk::Transaction& ledger, std::string code, std::string name, Sport sport, Material material,
                          int micrometres) {
    return ledger.strings().add({.id = std::nullopt,
                                 .code = std::move(code),
                                 .name = std::move(name),
                                 .colour = "",
                                 .sport = sport,
                                 .material = material,
                                 .diameterMicrometres = micrometres,
                                 .gaugeName = "",
                                 .milligramsPerMetre = std::nullopt,
                                 .stretchPercent = std::nullopt});
}

PriceLine priceOf(ChargeKind kind, std::int64_t pence, std::optional<StringArticleId> article = std::nullopt,
                  std::string label = {}) {
    return {.kind = kind,
            .sport = std::nullopt,
            .method = std::nullopt,
            .article = article,
            .label = std::move(label),
            .amount = pounds(pence)};
}

void addPrices(desk::Transaction& ledger, const HarbourLane& shop) {
    using enum ChargeKind;
    ledger.priceLists().add(
        {.validFrom = std::chrono::year(2026) / 1 / 1,
         .currency = Currency::pounds(),
         .taxRule = TaxRule::Included,
         .lines = {priceOf(Labour, 1400), priceOf(OwnStringLabour, 1600), priceOf(Rush, 500),
                   priceOf(Extra, 50, std::nullopt, "grommet tube"), priceOf(FullBed, 1300, shop.kestrelline),
                   priceOf(HalfBed, 650, shop.kestrelline), priceOf(FullBed, 1600, shop.larkspun),
                   priceOf(HalfBed, 800, shop.larkspun), priceOf(FullBed, 1200, shop.tarnweave),
                   priceOf(FullBed, 1000, shop.swiftlet)}});
}

FrameModel frame(std::string name, Sport sport, int mains, int crosses, HoopEnd start) {
    FrameModel model;
    model.name = std::move(name);
    model.sport = sport;
    model.pattern.mains = mains;
    model.pattern.crosses = crosses;
    model.pattern.mainsStart = start;
    return model;
}

FrameModelId addAldermoor98(desk::Transaction& ledger) {
    FrameModel model = frame("Aldermoor 98", Sport::Tennis, 16, 19, HoopEnd::Head);
    model.hoop.headAreaCm2 = 632.257; // 98 square inches
    model.marked = {lb(50), lb(60)};
    const FrameModelId id = must(desk::addFrame(ledger, model));
    const auto usual = [&](PieceRole role, std::optional<Material> material, std::string route, Length cut,
                           std::optional<Length> shortSide) {
        ledger.frames().setUsualCut({id, role, material, std::move(route), cut, shortSide});
    };
    usual(PieceRole::Whole, Material::Polyester, "plain-1", mm(11'200), mm(3'000));
    usual(PieceRole::Whole, Material::Multifilament, "plain-1", mm(10'800), mm(3'000));
    usual(PieceRole::Mains, std::nullopt, "", mm(6'200), std::nullopt);
    usual(PieceRole::Crosses, std::nullopt, "", mm(5'600), std::nullopt);
    return id;
}

FrameModelId addCorranDrop(desk::Transaction& ledger) {
    FrameModel model = frame("Corran Drop 500", Sport::Squash, 14, 18, HoopEnd::Throat);
    model.hoop.lengthMm = 352;
    model.hoop.widthMm = 186;
    model.hoop.openThroat = true;
    model.marked = {lb(20), lb(28)};
    const FrameModelId id = must(desk::addFrame(ledger, model));
    ledger.frames().setUsualCut({id, PieceRole::Whole, std::nullopt, "plain-2", mm(9'300), mm(2'900)});
    return id;
}

FrameModelId addTarnRidge(desk::Transaction& ledger) {
    FrameModel model = frame("Tarn Ridge 100", Sport::Tennis, 18, 20, HoopEnd::Throat);
    model.hoop.headAreaCm2 = 645.16; // 100 square inches
    model.marked = {lb(50), lb(60)};
    model.note.forcedSide = ForcedSide{Side::Right, "groove in the strip"};
    model.note.mountingMark = "butt-cap logo up";
    const FrameModelId id = must(desk::addFrame(ledger, model));
    ledger.frames().setUsualCut({id, PieceRole::Whole, Material::Polyester, "", mm(11'700), std::nullopt});
    return id;
}

FrameModelId addPellowFeather(desk::Transaction& ledger) {
    FrameModel model = frame("Pellow Feather", Sport::Badminton, 22, 21, HoopEnd::Head);
    model.marked.highest = lb(26);
    const FrameModelId id = must(desk::addFrame(ledger, model));
    ledger.frames().setUsualCut({id, PieceRole::Mains, std::nullopt, "", mm(5'500), std::nullopt});
    ledger.frames().setUsualCut({id, PieceRole::Crosses, std::nullopt, "", mm(4'400), std::nullopt});
    return id;
}
} // namespace

std::string describe(const Refusal& refusal) {
    std::string text = "code " + std::to_string(static_cast<int>(refusal.code()));
    for (const Argument& argument : refusal.arguments()) {
        text += ", " + argument.name + ": " + refusal.text(argument.name);
    }
    return text;
}

Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }
Tension lb(double pounds) { return must(Tension::fromHundredths(std::llround(pounds * 100), TensionUnit::Pound)); }
Tension kg(double kilograms) {
    return must(Tension::fromHundredths(std::llround(kilograms * 100), TensionUnit::Kilogram));
}

Instant at(CivilDate date, std::chrono::minutes time) {
    OpeningHours hours;
    hours.timeZone = kZone;
    return toInstant(hours, date, time);
}

HarbourLane settle(desk::Transaction& ledger) {
    setHours(ledger.shop());
    HarbourLane shop{
        .oriel = ledger.shop().add(desk::StaffMember{std::nullopt, "Oriel Tamm"}),
        .bastian = ledger.shop().add(desk::StaffMember{std::nullopt, "Bastian Quill"}),
        .benchA = ledger.shop().add(desk::Machine{std::nullopt, "Bench A", TensionUnit::Pound}),
        .benchB = ledger.shop().add(desk::Machine{std::nullopt, "Bench B", TensionUnit::Kilogram}),
        .kestrelline = addString(ledger, "K", "Kestrelline 125", Sport::Tennis, Material::Polyester, 1250),
        .larkspun = addString(ledger, "L", "Larkspun 130", Sport::Tennis, Material::Multifilament, 1300),
        .tarnweave = addString(ledger, "T", "Tarnweave 120", Sport::Squash, Material::Multifilament, 1200),
        .swiftlet = addString(ledger, "W", "Swiftlet 68", Sport::Badminton, Material::Multifilament, 680),
        .aldermoor98 = addAldermoor98(ledger),
        .corranDrop = addCorranDrop(ledger),
        .tarnRidge = addTarnRidge(ledger),
        .pellowFeather = addPellowFeather(ledger),
    };
    addPrices(ledger, shop);
    return shop;
}

LotId putOnShelf(desk::Transaction& ledger, const HarbourLane& shop, std::string tag, StringArticleId article,
                 Length nominal, Length left, Instant when) {
    const Lot lot = must(desk::receiveLot(ledger, {.tag = std::move(tag),
                                                   .article = article,
                                                   .owner = std::nullopt,
                                                   .nominal = nominal,
                                                   .price = pounds(11'000),
                                                   .shipping = pounds(450),
                                                   .batch = "",
                                                   .by = shop.stockroom(when)}));
    if (left != nominal) {
        (void)must(desk::correctLot(ledger, {*lot.id, left, shop.stockroom(when)}));
    }
    return *lot.id;
}

CustomerId customer(desk::Transaction& ledger, std::string name, std::string phone) {
    Customer person{.id = std::nullopt, .name = std::move(name), .contacts = {}};
    if (!phone.empty()) {
        person.contacts.push_back({Contact::Kind::Phone, std::move(phone)});
    }
    static int forms = 0; // each asks through a form of its own
    return must(desk::addCustomer(ledger, {"customer-" + std::to_string(++forms), person}));
}

RacketId racket(desk::Transaction& ledger, CustomerId owner, FrameModelId frame, std::string mark) {
    return must(desk::addRacket(
        ledger, {"racket-" + std::to_string(owner.value()) + '-' + std::to_string(frame.value()) + '-' + mark, owner,
                 frame, std::move(mark)}));
}

Lot lotTagged(desk::Transaction& ledger, std::string_view tag) {
    const auto lot = ledger.lots().byTag(tag);
    if (!lot) {
        throw std::runtime_error("no lot " + std::string(tag));
    }
    return *lot;
}

} // namespace rw::stories
