// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

using testing::ElementsAre;
using testing::IsEmpty;

namespace rw::sql::test {

/// Jobs in lists: the queue, the rack, histories.
class JobsListsTest : public StockedTest {
protected:
    JobId add(const std::string& key, int minutes, std::vector<JobPiece> pieces,
              std::optional<Instant> promised = std::nullopt) {
        Job job = this->job(key, std::move(pieces));
        job.promised = promised;
        return jobs().add(job, by(minutes, "counter"));
    }
    JobId add(const std::string& key, int minutes) { return add(key, minutes, {piece(PieceRole::Whole, string("K"))}); }
    std::vector<std::int64_t> numbersIn(const std::vector<JobState>& states) {
        std::vector<std::int64_t> numbers;
        for (const desk::JobLine& line : jobs().inStates(states)) {
            numbers.push_back(line.number);
        }
        return numbers;
    }
};
ON_BOTH_ENGINES(JobsListsTest);

TEST_P(JobsListsTest, AreListedByPromiseThoseWithoutOneLast) {
    const auto first = add("1", 0);                                                   // 1001
    (void)add("2", 1, {piece(PieceRole::Whole, string("K"))}, at(300));               // 1002
    (void)add("3", 2, {piece(PieceRole::Whole, string("K"))}, at(100));               // 1003
    const auto fourth = add("4", 3, {piece(PieceRole::Whole, string("K"))}, at(300)); // 1004
    (void)add("5", 4);                                                                // 1005
    record(fourth, JobEventKind::Taken, 5);
    record(first, JobEventKind::Withdrawn, 6);
    EXPECT_THAT(numbersIn({JobState::Logged, JobState::OnTheMachine}), ElementsAre(1003, 1002, 1004, 1005));
    EXPECT_THAT(numbersIn({JobState::OnTheMachine}), ElementsAre(1004));
    EXPECT_THAT(numbersIn({JobState::Withdrawn, JobState::Withdrawn, JobState::Logged}),
                ElementsAre(1003, 1002, 1001, 1005));
    EXPECT_THAT(numbersIn({JobState::Logged, JobState::OnTheMachine, JobState::Strung, JobState::Collected,
                           JobState::Waiting, JobState::Withdrawn}),
                ElementsAre(1003, 1002, 1004, 1001, 1005));
    EXPECT_THAT(numbersIn({JobState::Strung}), IsEmpty());
    EXPECT_THAT(numbersIn({}), IsEmpty());
}

TEST_P(JobsListsTest, ALineSaysWhoseWhichAndWhat) {
    const auto id = add("1", 7, {piece(PieceRole::Mains, string("K")), piece(PieceRole::Crosses, string("L"))}, at(90));
    const auto lines = jobs().inStates({JobState::Logged});
    ASSERT_EQ(lines.size(), 1U);
    const desk::JobLine& line = lines.front();
    EXPECT_EQ(line.id, id);
    EXPECT_EQ(line.number, 1001);
    EXPECT_EQ(line.state, JobState::Logged);
    EXPECT_EQ(line.customer, "Petra Lindobi");
    EXPECT_EQ(line.frame, "Aldermoor 98");
    EXPECT_EQ(line.mark, "A");
    EXPECT_EQ(line.sport, Sport::Tennis);
    EXPECT_EQ(line.method, Method::TwoPiece);
    EXPECT_EQ(line.asked, (TensionPair{lb(5'200), lb(5'000)}));
    EXPECT_EQ(line.strings, "K / L");
    EXPECT_EQ(line.promised, at(90));
    EXPECT_EQ(line.logged, at(7));

    (void)add("2", 8, {piece(PieceRole::Mains, string("K")), piece(PieceRole::Crosses, string("K"))});
    (void)add("3", 9, {piece(PieceRole::Whole, string("L"))});
    (void)add("4", 10, {piece(PieceRole::Crosses, string("L"))});
    std::vector<std::string> codes;
    for (const desk::JobLine& each : jobs().inStates({JobState::Logged})) {
        codes.push_back(each.strings);
    }
    EXPECT_THAT(codes, ElementsAre("K / L", "K", "L", "L"));
}

TEST_P(JobsListsTest, ALineSaysWhatWasSaidToTheCustomer) {
    Job wanted = job("1", {piece(PieceRole::Whole, string("K"))});
    wanted.mustBy = at(400);
    const auto id = jobs().add(wanted, by(0, "counter"));
    const auto line = [&] {
        return jobs().inStates({JobState::Logged, JobState::OnTheMachine, JobState::Strung}).front();
    };
    EXPECT_EQ(line().mustBy, at(400));
    EXPECT_EQ(line().highestMarked, lb(6'000));
    record(id, JobEventKind::Taken, 10);
    record(id, JobEventKind::Strung, 20);
    EXPECT_FALSE(line().told);
    jobs().tell(id, "phone", by(30, "counter"));
    jobs().tell(id, "message", by(40, "counter"));
    EXPECT_EQ(line().told, at(40));
    record(id, JobEventKind::Reopened, 50);
    EXPECT_FALSE(line().told);
    record(id, JobEventKind::Strung, 60);
    EXPECT_FALSE(line().told) << "they were told of the stringing before";
}

TEST_P(JobsListsTest, HistoriesAreNewestFirst) {
    const auto other = customers().addRacket({std::nullopt, petra(), frame(), "B"}, "petra B");
    const auto late = add("1", 20);
    const auto early = add("2", 10);
    Job twin = job("3", {piece(PieceRole::Whole, string("K"))});
    twin.racket = other;
    const auto twins = jobs().add(twin, by(15, "counter"));
    EXPECT_THAT(jobs().ofRacket(racket()), ElementsAre(late, early));
    EXPECT_THAT(jobs().ofRacket(other), ElementsAre(twins));
    EXPECT_THAT(jobs().ofCustomer(petra()), ElementsAre(late, twins, early));
    EXPECT_THAT(jobs().ofFrame(frame(), 50), ElementsAre(late, twins, early));
    EXPECT_THAT(jobs().ofFrame(frame(), 2), ElementsAre(late, twins));
    EXPECT_THAT(jobs().ofFrame(FrameModelId::of(987'654), 50), IsEmpty());
    const auto same = add("4", 20);
    EXPECT_THAT(jobs().ofRacket(racket()), ElementsAre(same, late, early)) << "the later written of one moment first";
}

TEST_P(JobsListsTest, LastTakesAreWhatHeld) {
    const auto k = string("K");
    const auto k2 = reel("K-2", k, mm(200'000));
    const auto l2 = reel("L-2", string("L"), mm(200'000));
    const auto attempt = [&](JobId job, std::size_t index) { return stored(job).pieces[index].current().id.value(); };
    const auto finish = [&](JobId job) {
        record(job, JobEventKind::Taken, 50);
        record(job, JobEventKind::Strung, 60);
    };
    const auto both = add("1", 1, {piece(PieceRole::Mains, k), piece(PieceRole::Crosses, k)});
    cut(attempt(both, 0), k2, mm(6'200), 5);
    cut(attempt(both, 1), k2, mm(5'600), 6);
    (void)jobs().loseAttempt(attempt(both, 1), LostReason::CameShort, at(7));
    cut(attempt(both, 1), k2, mm(5'750), 8);
    finish(both);
    const auto hybrid = add("2", 2, {piece(PieceRole::Mains, k), piece(PieceRole::Crosses, string("L"))});
    cut(attempt(hybrid, 0), k2, mm(6'300), 9);
    cut(attempt(hybrid, 1), l2, mm(5'500), 9);
    finish(hybrid);
    record(hybrid, JobEventKind::Collected, 70);
    const auto unfinished = add("3", 3, {piece(PieceRole::Whole, k)});
    cut(attempt(unfinished, 0), k2, mm(11'200), 10);

    const auto ownMains = add("4", 4, {piece(PieceRole::Mains, k), piece(PieceRole::Crosses, k)});
    connection().execute("UPDATE job_piece SET source = 'customers-set' WHERE role = 'mains' AND job_id = " +
                         std::to_string(ownMains.value()));
    cut(attempt(ownMains, 1), k2, mm(5'600), 11);
    finish(ownMains);
    const auto whole = add("5", 5, {piece(PieceRole::Whole, k)});
    cut(attempt(whole, 0), k2, mm(11'200), 12);
    finish(whole);

    EXPECT_THAT(jobs().lastTakes(k, 20), ElementsAre(mm(11'200), mm(11'950))) << "half a bed is no job's worth";
    EXPECT_THAT(jobs().lastTakes(k, 1), ElementsAre(mm(11'200)));
    EXPECT_THAT(jobs().lastTakes(string("L"), 20), IsEmpty());
    EXPECT_THAT(jobs().lastTakes(string("T"), 20), IsEmpty());
}

} // namespace rw::sql::test
