// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/sample_cards.h"

#include "tests/ui/sample_plans.h"

#include <chrono>

namespace rw::ui::samples {

namespace {
using namespace std::chrono_literals;

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }
Tension tension(const char* text) { return Tension::tryParse(text, TensionUnit::Pound).value(); }
Money nothing() { return Money::zero(Currency::pounds()); }

StringArticle larkspun() {
    return {.id = StringArticleId::of(2),
            .code = "L",
            .name = "Larkspun 130",
            .colour = "natural",
            .sport = Sport::Tennis,
            .material = Material::Multifilament,
            .diameterMicrometres = 1300,
            .gaugeName = "16",
            .milligramsPerMetre = 1500,
            .stretchPercent = std::nullopt};
}

StringArticle kestrelline() {
    return {.id = StringArticleId::of(1),
            .code = "K",
            .name = "Kestrelline 125",
            .colour = "black",
            .sport = Sport::Tennis,
            .material = Material::Polyester,
            .diameterMicrometres = 1250,
            .gaugeName = "17",
            .milligramsPerMetre = 1700,
            .stretchPercent = std::nullopt};
}

Lot lot(const char* tag, const StringArticle& article, std::int64_t left) {
    return {.id = LotId::of(7),
            .tag = tag,
            .article = *article.id,
            .kind = LotKind::Reel,
            .owner = std::nullopt,
            .nominal = mm(200000),
            .length = mm(left),
            .price = nothing(),
            .shipping = nothing(),
            .batch = {},
            .received = Instant{},
            .sealed = false,
            .measuredSinceLastCut = false,
            .closed = std::nullopt};
}

desk::CardPiece piece(PieceRole role, const StringArticle& article, std::optional<Lot> from, std::int64_t planned,
                      Fit fit) {
    const Length leaves = from ? from->length - mm(planned) : mm(0);
    JobPiece stored{
        .id = JobPieceId::of(1),
        .role = role,
        .article = *article.id,
        .source = PieceSource::ShopLot,
        .lot = from ? from->id : std::nullopt,
        .pinned = false,
        .planned = mm(planned),
        .expected = mm(planned - 200),
        .attempts = {Attempt{.id = AttemptId::of(1), .number = 1, .cut = std::nullopt, .lost = std::nullopt}}};
    return {std::move(stored), article, std::move(from), fit, leaves};
}

desk::JobCard card(std::int64_t number, const char* customer, const char* mark, TensionPair asked,
                   std::vector<desk::CardPiece> pieces, length::CutPlan plan) {
    FrameModel frame;
    frame.id = FrameModelId::of(1);
    frame.name = "Aldermoor 98";
    frame.marked = {tension("50 lb"), tension("60 lb")};
    Job job{.id = JobId::of(1),
            .number = number,
            .requestKey = "sample",
            .customer = CustomerId::of(1),
            .racket = RacketId::of(1),
            .method = plan.method,
            .route = plan.route,
            .shortSide = Side::Left,
            .shortSideLength = std::nullopt,
            .asked = asked,
            .pieces = {},
            .charges = {},
            .total = nothing(),
            .promised = Instant(std::chrono::sys_days{2026y / 1 / 22} + 16h + 30min),
            .note = {},
            .state = JobState::Logged,
            .logged = Instant(std::chrono::sys_days{2026y / 1 / 22} + 10h),
            .strung = std::nullopt,
            .collected = std::nullopt,
            .version = 1};
    for (const desk::CardPiece& p : pieces) {
        job.pieces.push_back(p.piece);
    }
    return {.job = std::move(job),
            .customer = {CustomerId::of(1), customer, {}, 1},
            .racket = {RacketId::of(1), CustomerId::of(1), FrameModelId::of(1), mark},
            .frame = std::move(frame),
            .pieces = std::move(pieces),
            .plan = std::move(plan),
            .shortSide = std::nullopt,
            .machine = std::nullopt,
            .mains = std::nullopt,
            .crosses = std::nullopt,
            .stringer = {}};
}
} // namespace

desk::JobCard petra() {
    desk::JobCard made = card(2121, "Petra Lindobi", "A", {tension("52 lb"), tension("50 lb")},
                              {piece(PieceRole::Whole, larkspun(), lot("L-3", larkspun(), 48700), 10800, Fit::Fits)},
                              onePiece(Side::Left));
    made.job.note = "two pounds looser than last time: it felt a touch stiff";
    made.shortSide = desk::ShortSideProposal{.side = Side::Left,
                                             .from = desk::SideFrom::LastTime,
                                             .because = {},
                                             .againstChoice = false,
                                             .mountingMark = "butt-cap logo up",
                                             .measure = mm(3000),
                                             .headLengths = 8.8,
                                             .topCrosses = 1};
    made.machine = desk::Machine{.id = MachineId::of(2),
                                 .name = "Bench B",
                                 .unit = TensionUnit::Kilogram,
                                 .stepHundredths = 50,
                                 .reach = mm(300)};
    made.mains = desk::dialSetting(made.job.asked.mains, TensionUnit::Kilogram, 50);
    made.crosses = desk::dialSetting(made.job.asked.crosses, TensionUnit::Kilogram, 50);
    return made;
}

desk::JobCard tomas() {
    return card(2122, "Tomas Ferreday", "", {tension("50 lb"), tension("52 lb")},
                {piece(PieceRole::Mains, kestrelline(), lot("K-2", kestrelline(), 6400), 6200, Fit::FitsIfBookIsRight),
                 piece(PieceRole::Crosses, larkspun(), lot("L-3", larkspun(), 48700), 5600, Fit::Fits)},
                twoPieces());
}

} // namespace rw::ui::samples
