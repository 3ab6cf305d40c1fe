// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

namespace rw::sql::test {

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }
Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }
Tension lb(std::int64_t hundredths) { return Tension::fromHundredths(hundredths, TensionUnit::Pound).value(); }
Tension kg(std::int64_t hundredths) { return Tension::fromHundredths(hundredths, TensionUnit::Kilogram).value(); }
Instant at(int minutes) {
    using namespace std::chrono;
    return sys_days(2026y / March / 2) + hours(10) + std::chrono::minutes(minutes);
}

void RepositoryTest::SetUp() {
    m_connection = connectMigrated();
    m_connection->execute("INSERT INTO ledger (id, application, created_at, time_zone, currency) "
                          "VALUES (1, 'reelwright', 0, 'Europe/London', 'GBP')");
    m_work.emplace(Work::writing(*m_connection));
    m_customers.emplace(*m_connection, m_people);
    m_frames.emplace(*m_connection);
    m_strings.emplace(*m_connection);
    m_lots.emplace(*m_connection);
    m_jobs.emplace(*m_connection);
    m_priceLists.emplace(*m_connection);
    m_shop.emplace(*m_connection);
}

void RepositoryTest::TearDown() {
    if (m_work) {
        EXPECT_NO_THROW(commit());
    }
}

void RepositoryTest::commit() {
    m_work->commit();
    m_work.reset();
}

void StockedTest::SetUp() {
    RepositoryTest::SetUp();
    m_staff = shop().add(desk::StaffMember{std::nullopt, "Bastian Quill"});
    m_machine = shop().add(desk::Machine{std::nullopt, "Bench A", TensionUnit::Pound, 50, mm(300)});
    m_petra =
        customers().add({std::nullopt, "Petra Lindobi", {{Contact::Kind::Phone, "+44 (0)20 7946 0771"}}, 0}, "petra");
    FrameModel frame;
    frame.name = "Aldermoor 98";
    frame.marked.highest = lb(6'000);
    m_frame = frames().add(frame);
    m_racket = customers().addRacket({std::nullopt, *m_petra, *m_frame, "A"}, "petra A");
    for (const std::string code : {"L", "K", "T"}) {
        StringArticle article;
        article.code = code;
        article.name = "String " + code;
        m_articles.emplace(code, strings().add(article));
    }
}

By StockedTest::by(int minutes, std::string station) const { return {*m_staff, std::move(station), at(minutes)}; }

LotId StockedTest::reel(const std::string& tag, StringArticleId article, Length length,
                        std::optional<CustomerId> owner) {
    const auto id = lots().add({.id = std::nullopt,
                                .tag = tag,
                                .article = article,
                                .owner = owner,
                                .nominal = length,
                                .price = pounds(11'000),
                                .shipping = pounds(450),
                                .batch = {},
                                .received = at(-1000),
                                .closed = std::nullopt});
    (void)lots().move({.id = std::nullopt,
                       .lot = id,
                       .reason = MovementReason::Received,
                       .change = length,
                       .attempt = std::nullopt,
                       .lostReason = std::nullopt,
                       .corrects = std::nullopt,
                       .by = by(-1000, "stockroom")});
    return id;
}

JobPiece StockedTest::piece(PieceRole role, StringArticleId article, std::optional<LotId> lot) {
    return {.id = std::nullopt,
            .role = role,
            .article = article,
            .lot = lot,
            .planned = mm(6'200),
            .expected = mm(6'000),
            .attempts = {}};
}

Job StockedTest::job(const std::string& key, std::vector<JobPiece> pieces) {
    return {.id = std::nullopt,
            .requestKey = key,
            .customer = petra(),
            .racket = racket(),
            .route = {},
            .shortSideLength = std::nullopt,
            .asked = {lb(5'200), lb(5'000)},
            .pieces = std::move(pieces),
            .charges = {},
            .total = pounds(0),
            .promised = std::nullopt,
            .note = {},
            .logged = at(0),
            .strung = std::nullopt,
            .collected = std::nullopt};
}

void StockedTest::record(JobId job, JobEventKind kind, int minutes, std::optional<AttemptId> attempt) {
    (void)jobs().record(
        {.id = std::nullopt, .job = job, .kind = kind, .by = by(minutes), .machine = std::nullopt, .attempt = attempt});
}

MovementId StockedTest::cut(AttemptId attempt, LotId lot, Length length, int minutes) {
    return lots().move({.id = std::nullopt,
                        .lot = lot,
                        .reason = MovementReason::Cut,
                        .change = -length,
                        .attempt = attempt,
                        .lostReason = std::nullopt,
                        .corrects = std::nullopt,
                        .by = by(minutes)});
}

} // namespace rw::sql::test
