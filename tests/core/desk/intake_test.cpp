// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/demo_fixture.h"

// What is proposed while somebody types, and what logging keeps or refuses.
namespace rw::desk::test {
namespace {

using Intake = DemoInMemory;

TEST_F(Intake, PressingTwiceLogsOnce) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    const Job first = logged(racket, draft, "one key");
    const Job second = logged(racket, draft, "one key");
    EXPECT_EQ(second.id, first.id);
    EXPECT_NE(logged(racket, draft, "another key").id, first.id);
}

TEST_F(Intake, PressingTwiceIsTheSameWishWhateverTheShopAdded) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.method = Method::OnePiece;
    draft.shortSide = Side::Right;
    draft.rush = true;
    draft.extras = {{"grommet tube", 2}};
    draft.discount = Discount{.hundredthsPercent = 1000, .fixed = std::nullopt, .reason = "team"};
    draft.mustBy = kNow + std::chrono::hours(24);
    LogJob command = logging(racket, draft, "chosen");
    command.note = " stiff last time ";
    command.inspection = {" cover ", "bumper worn"};
    const auto log = [&] { return write([&](Transaction& t) { return logJob(t, command); }); };
    const auto first = log();
    ASSERT_TRUE(first.has_value());
    EXPECT_EQ(log()->id, first->id);
    ASSERT_TRUE(take(*first->id));
    ASSERT_TRUE(write([&](Transaction& t) -> Result<void> {
        t.jobs().addNote(*first->id, "the bumper is worn");
        return {};
    }));
    EXPECT_EQ(log()->id, first->id) << "the bench's words are no other wish";
    // A frame that forces its side is asked for the other one: what was stored is not what was chosen.
    const RacketSummary forced = racketOf("Brockwell", "Tarn Ridge 100");
    IntakeDraft against = draftFor(forced, "K", "K", "52", "52");
    against.method = Method::OnePiece;
    against.shortSide = Side::Left;
    const Job job = logged(forced, against, "forced");
    EXPECT_EQ(job.shortSide, Side::Right);
    EXPECT_EQ(logged(forced, against, "forced").id, job.id);
}

TEST_F(Intake, AnotherWishUnderTheSameKeyIsRefusedAndChangesNothing) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const LogJob command = logging(racket, draftFor(racket, "L", "L", "52", "50"), "one key");
    const auto log = [&](const LogJob& wish) { return write([&](Transaction& t) { return logJob(t, wish); }); };
    const auto first = log(command);
    ASSERT_TRUE(first.has_value());
    std::vector<LogJob> others(12, command);
    others[0].draft.tensions = {lb("60"), lb("60")};
    others[1].draft.mains = off("K");
    others[2].draft.crosses = off("K");
    others[3].draft.mains.source = PieceSource::CustomersSet;
    others[4].draft.mains.lot = lot("L-3").id;
    others[5].draft.rush = true;
    others[6].draft.extras = {{"grommet tube", 1}};
    others[7].note = "two pounds looser";
    others[8].draft.mustBy = kNow + std::chrono::hours(24);
    others[9].draft.discount = Discount{.hundredthsPercent = 1000, .fixed = std::nullopt, .reason = "team"};
    others[10].inspection.cameWith = "cover";
    others[11].inspection.remarks = "bumper worn";
    for (std::size_t i = 0; i < others.size(); ++i) {
        const auto refused = log(others[i]);
        ASSERT_EQ(refusalOf(refused), Code::ChangedMeanwhile) << i;
        EXPECT_EQ(refused.error().number("job"), first->number) << i;
    }
    LogJob twin = command;
    const RacketSummary b = racketOf("Lindobi", "Aldermoor 98", "B");
    twin.racket = *b.racket.id;
    EXPECT_EQ(refusalOf(log(twin)), Code::ChangedMeanwhile);
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().get(*first->id); })->asked, first->asked);
}

TEST_F(Intake, ADiscountHasAReasonAndStandsOnTheBill) {
    IntakeDraft draft = draftFor(racketOf("Lindobi", "Aldermoor 98", "A"), "L", "L", "52", "50");
    draft.discount = Discount{.hundredthsPercent = 1000, .fixed = std::nullopt, .reason = ""};
    const auto without = preview(draft);
    ASSERT_EQ(refusalOf(without), Code::Missing);
    EXPECT_EQ(without.error().text("what"), "reason");
    draft.discount->reason = "team";
    EXPECT_EQ(preview(draft)->quote.total, pounds(2700)) << "10 % of 30.00";
    draft.discount->fixed = pounds(250);
    EXPECT_EQ(preview(draft)->quote.total, pounds(2750));
    EXPECT_EQ(preview(draft)->quote.charges.back().label, "team");
    draft.discount->reason = std::string(201, 'x');
    EXPECT_EQ(refusalOf(preview(draft)), Code::TooLong);
}

TEST_F(Intake, APromiseAfterTheCustomerMustHaveItIsTold) {
    IntakeDraft draft = draftFor(racketOf("Lindobi", "Aldermoor 98", "A"), "L", "L", "52", "50");
    EXPECT_FALSE(preview(draft)->afterMustBy);
    const Instant promise = preview(draft)->promise;
    draft.mustBy = promise;
    EXPECT_FALSE(preview(draft)->afterMustBy);
    draft.mustBy = promise - std::chrono::minutes(1);
    EXPECT_TRUE(preview(draft)->afterMustBy);
    const Job job = logged(racketOf("Lindobi", "Aldermoor 98", "A"), draft, "must by");
    EXPECT_EQ(job.mustBy, draft.mustBy);
    EXPECT_EQ(job.promised, promise) << "the two are kept apart";
}

TEST_F(Intake, HowTheRacketCameInStandsOnItsCard) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    LogJob command = logging(racket, draftFor(racket, "L", "L", "52", "50"), "with its cover");
    command.inspection = {" cover, one grip ", "bumper worn at 2 o'clock\n"};
    const auto job = write([&](Transaction& t) { return logJob(t, command); });
    ASSERT_TRUE(job);
    EXPECT_EQ(card(*job->id).inspection, (Inspection{"cover, one grip", "bumper worn at 2 o'clock"}));
    command.requestKey = "too long";
    command.inspection.remarks = std::string(2001, 'x');
    EXPECT_EQ(refusalOf(write([&](Transaction& t) { return logJob(t, command); })), Code::TooLong);
}

TEST_F(Intake, ACustomersOwnSetIsHeldAgainstWhatTheJobNeeds) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const auto setsOf = [&](Method method, Length length) {
        IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
        draft.method = method;
        draft.mains.source = PieceSource::CustomersSet;
        draft.mains.setLength = length;
        return preview(draft)->ownSets;
    };
    const auto plenty = setsOf(Method::TwoPiece, metres(15));
    ASSERT_EQ(plenty.size(), 1U);
    EXPECT_EQ(plenty.front().verdict, length::PacketVerdict::Enough);
    EXPECT_FALSE(plenty.front().better);
    EXPECT_EQ(setsOf(Method::OnePiece, metres(3)).front().verdict, length::PacketVerdict::NotEnough);
    EXPECT_FALSE(setsOf(Method::OnePiece, metres(3)).front().better) << "three metres do nothing";

    // The shortest set that is enough in one piece: two pieces take more, for their second start and end.
    Length length = metres(9);
    while (setsOf(Method::OnePiece, length).front().verdict != length::PacketVerdict::Enough) {
        length += metres(0.05);
    }
    const OwnSet two = setsOf(Method::TwoPiece, length).front();
    EXPECT_NE(two.verdict, length::PacketVerdict::Enough);
    ASSERT_TRUE(two.better);
    EXPECT_EQ(two.better->advice, SetAdvice::OnePiece);
    EXPECT_EQ(two.better->verdict, length::PacketVerdict::Enough);
    EXPECT_LT(two.better->need, two.need);

    // Half a set: the mains alone.
    EXPECT_EQ(setsOf(Method::TwoPiece, metres(7)).front().better->advice, SetAdvice::OtherCrosses);
}

TEST_F(Intake, ASetForHalfTheBedIsHeldAgainstThatHalf) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    IntakeDraft draft = draftFor(racket, "K", "L", "50", "52");
    draft.crosses->source = PieceSource::CustomersSet;
    EXPECT_TRUE(preview(draft)->ownSets.empty()) << "nobody said how long it is";
    draft.crosses->setLength = metres(7);
    const auto sets = preview(draft)->ownSets;
    ASSERT_EQ(sets.size(), 1U);
    EXPECT_EQ(sets.front().first, PieceRole::Crosses);
    EXPECT_EQ(sets.front().verdict, length::PacketVerdict::Enough);
}

TEST_F(Intake, ACustomersReelKeptHereComesWithThePersonAndCostsNoString) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    ASSERT_TRUE(receive(delivery("L", "P-1", metres(100), racket.racket.customer)));
    const PersonFound petra = personCalled("Lindobi");
    ASSERT_EQ(petra.lots.size(), 1U);
    EXPECT_EQ(petra.lots.front().tag, "P-1");
    EXPECT_TRUE(personCalled("Ferreday").lots.empty());
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.mains.source = PieceSource::CustomersLot;
    draft.mains.lot = petra.lots.front().id;
    const auto shown = preview(draft);
    ASSERT_TRUE(shown.has_value());
    EXPECT_EQ(shown->pieces.front().lot->tag, "P-1");
    EXPECT_EQ(shown->quote.total, pounds(1600)) << "labour with the customer's own string";
}

// A promise that was read out a minute before the step of the clock is still kept a minute after it; one for which no
// time is left is not.
TEST_F(Intake, APromiseThatWasToldStandsWhileTheWorkCanBeDone) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    const IntakeDraft draft = draftFor(racket, "K", "L", "50", "52");
    const Instant told = preview(draft)->promise;
    const auto loggedAt = [&](std::string_view key, Instant when) {
        LogJob command = logging(racket, draft, key);
        command.told = told;
        command.by.at = when;
        return write([&](Transaction& t) { return logJob(t, command); })->promised;
    };
    Instant later = kNow;
    while (read([&](Transaction& t) { return previewIntake(t, draft, later); })->promise <= told) {
        later += std::chrono::minutes(1);
    }
    EXPECT_EQ(loggedAt("a step later", later), told);
    EXPECT_GT(loggedAt("too late", told), told);
}

TEST_F(Intake, KeepsWhatWasShown) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    IntakeDraft draft = draftFor(racket, "K", "L", "50", "52");
    draft.rush = true;
    draft.extras = {{"grommet tube", 3}};
    const auto shown = preview(draft);
    LogJob command = logging(racket, draft, "kept");
    command.note = "  look at the bumper \n";
    const auto job = write([&](Transaction& t) { return logJob(t, command); });
    ASSERT_TRUE(job.has_value());
    EXPECT_EQ(job->total, shown->quote.total);
    EXPECT_EQ(job->total, pounds(1400 + 650 + 800 + 150 + 500));
    EXPECT_EQ(job->charges.size(), 5U);
    EXPECT_EQ(job->promised, shown->promise);
    EXPECT_EQ(job->note, "look at the bumper");
    EXPECT_EQ(job->state, JobState::Logged);
    ASSERT_EQ(job->pieces.size(), 2U);
    EXPECT_EQ(job->pieces[0].lot, shown->pieces[0].lot->id);
    EXPECT_FALSE(job->pieces[0].pinned);
    EXPECT_EQ(job->pieces[0].expected, shown->pieces[0].expected);
    EXPECT_EQ(job->number, 2129) << "the waiting ones end with 2128";
}

TEST_F(Intake, ALogRefusesWhatDoesNotBelongTogether) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const RacketSummary others = racketOf("Penhallow", "Corran Drop 500", "A");
    const LogJob sound = logging(racket, draftFor(racket, "L", "L", "52", "50"), "key");
    const auto codeOf = [&](const LogJob& command) {
        const int commits = fake.commits;
        const auto job = write([&](Transaction& t) { return logJob(t, command); });
        EXPECT_EQ(fake.commits, commits) << "a refusal leaves nothing behind";
        return refusalOf(job);
    };
    LogJob command = sound;
    command.requestKey = " ";
    EXPECT_EQ(codeOf(command), Code::Missing);
    command = sound;
    command.customer = CustomerId::of(999'999);
    EXPECT_EQ(codeOf(command), Code::NotFound);
    command = sound;
    command.racket = RacketId::of(999'999);
    EXPECT_EQ(codeOf(command), Code::NotFound);
    command = sound;
    command.racket = *others.racket.id;
    EXPECT_EQ(codeOf(command), Code::ImpossibleValue);
    command = sound;
    command.draft.frame = *others.frame.id;
    EXPECT_EQ(codeOf(command), Code::ImpossibleValue);
    command = sound;
    command.note = std::string(2001, 'x');
    EXPECT_EQ(codeOf(command), Code::TooLong);
}

TEST_F(Intake, WhatSomebodyChoseIsKeptOrRefusedNeverReplaced) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.route = "wrap-first-2"; // 8 mains a side from the head finish at the head
    EXPECT_EQ(refusalOf(preview(draft)), Code::RouteDoesNotFit);
    draft.route = "over-the-moon";
    EXPECT_EQ(refusalOf(preview(draft)), Code::RouteUnknown);
    draft.route = "plain-0";
    const auto chosen = preview(draft);
    ASSERT_TRUE(chosen.has_value());
    EXPECT_EQ(chosen->plan.route, "plain-0");
    EXPECT_EQ(chosen->pieces.front().cutFrom, CutFrom::UsualCut) << "another route's total serves";
    EXPECT_EQ(chosen->pieces.front().cut, metres(10.8));
    EXPECT_NE(chosen->shortSide->measure, metres(3.0)) << "its short side does not";
    EXPECT_EQ(chosen->shortSide->topCrosses, 0);

    draft.route = std::nullopt;
    draft.method = Method::TwoPiece;
    EXPECT_EQ(preview(draft)->plan.method, Method::TwoPiece);
    draft.crosses = off("K");
    draft.method = Method::OnePiece;
    EXPECT_EQ(refusalOf(preview(draft)), Code::ImpossibleValue);
    draft.method = std::nullopt;
    EXPECT_EQ(preview(draft)->plan.method, Method::TwoPiece) << "two strings are two pieces, whatever was last time";
}

TEST_F(Intake, ARememberedRouteNeverStopsAJob) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    for (FrameModel& frame : fake.rows.frames) {
        if (frame.id == racket.frame.id) {
            frame.pattern.mainsStart = HoopEnd::Throat; // somebody looked again: plain routes do not fit any more
        }
    }
    const auto shown = preview(draftFor(racket, "L", "L", "52", "50"));
    ASSERT_TRUE(shown.has_value());
    EXPECT_EQ(shown->plan.method, Method::OnePiece);
    EXPECT_EQ(shown->plan.route, "wrap-first-2");
}

TEST_F(Intake, AFrameNobodyMeasuredGetsAPlanFromItsSport) {
    FrameModel frame;
    frame.name = "Unheard Of 1";
    frame.pattern.mains = 16;
    frame.pattern.crosses = 18;
    const auto id = write([&](Transaction& t) { return addFrame(t, frame); });
    ASSERT_TRUE(id.has_value());
    IntakeDraft draft{.frame = *id,
                      .racket = std::nullopt,
                      .method = std::nullopt,
                      .route = std::nullopt,
                      .shortSide = std::nullopt,
                      .mains = off("K"),
                      .crosses = std::nullopt,
                      .tensions = {lb("52"), lb("50")},
                      .extras = {}};
    const auto shown = preview(draft);
    ASSERT_TRUE(shown.has_value());
    EXPECT_EQ(shown->plan.method, Method::TwoPiece);
    ASSERT_EQ(shown->pieces.size(), 2U);
    EXPECT_EQ(shown->pieces[0].cutFrom, CutFrom::Geometry);
    EXPECT_EQ(shown->pieces[0].lot->id, shown->pieces[1].lot->id) << "both off one reel";
    EXPECT_EQ(shown->pieces[1].leavesOnLot, shown->pieces[0].leavesOnLot - shown->pieces[1].cut);
    EXPECT_EQ(shown->quote.total, pounds(1400 + 1300));

    draft.method = Method::OnePiece; // where its mains start is not known: as the route needs
    const auto whole = preview(draft);
    ASSERT_TRUE(whole.has_value());
    EXPECT_EQ(whole->shortSide->from, SideFrom::Usual);
}

TEST_F(Intake, APinnedLotMustHoldThatStringAndBelongToTheShop) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "K", "K", "52", "50");
    draft.mains.lot = lot("K-4").id;
    const auto shown = preview(draft);
    ASSERT_TRUE(shown.has_value());
    EXPECT_EQ(shown->pieces.front().lot->tag, "K-4");
    EXPECT_TRUE(logged(racket, draft, "pinned").pieces.front().pinned);

    draft.mains.lot = lot("K-2").id;
    EXPECT_EQ(preview(draft)->pieces.front().fit, Fit::DoesNotFit) << "said, not refused";
    draft.mains.lot = lot("L-3").id;
    EXPECT_EQ(refusalOf(preview(draft)), Code::WrongLot);
    draft.mains.lot = LotId::of(999'999);
    EXPECT_EQ(refusalOf(preview(draft)), Code::NotFound);
    IntakeDraft used = draftFor(racket, "L", "L", "52", "50");
    used.mains.lot = lot("L-2").id;
    EXPECT_EQ(refusalOf(preview(used)), Code::LotClosed);
}

TEST_F(Intake, ACustomersOwnStringFollowsItsOwner) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const auto reel = receive(delivery("L", "Petra 1", metres(22), racket.racket.customer));
    ASSERT_TRUE(reel.has_value());
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    EXPECT_EQ(preview(draft)->pieces.front().lot->tag, "L-3") << "the shop's string is not hers";
    draft.mains.source = PieceSource::CustomersLot;
    const auto own = preview(draft);
    ASSERT_TRUE(own.has_value());
    EXPECT_EQ(own->pieces.front().lot->tag, "Petra 1");
    EXPECT_EQ(own->pieces.front().holding.left, metres(22));
    EXPECT_EQ(own->pieces.front().freeAfter, metres(11.2));
    EXPECT_EQ(own->quote.total, pounds(1600));

    const RacketSummary stranger = racketOf("Penhallow", "Corran Drop 500", "A");
    IntakeDraft theirs = draftFor(stranger, "L", "L", "26", "26");
    theirs.mains = {*string("L").id, PieceSource::CustomersLot, reel->id};
    EXPECT_EQ(refusalOf(preview(theirs)), Code::WrongLot);

    draft.mains.source = PieceSource::CustomersSet;
    const auto set = preview(draft);
    ASSERT_TRUE(set.has_value());
    EXPECT_FALSE(set->pieces.front().lot.has_value());
    EXPECT_EQ(set->pieces.front().fit, Fit::Fits);
    EXPECT_EQ(set->quote.total, pounds(1600));
}

TEST_F(Intake, TheSideFollowsTheCustomersOtherRacketsButNotAForcedOne) {
    const RacketSummary tarn = racketOf("Brockwell", "Tarn Ridge 100");
    IntakeDraft forced = draftFor(tarn, "K", "K", "54", "52");
    forced.method = Method::OnePiece;
    EXPECT_EQ(logged(tarn, forced, "tarn").shortSide, Side::Right);
    Racket fresh{std::nullopt, tarn.racket.customer, racketOf("Pruettley", "Aldermoor 110").racket.frame, "new"};
    fresh.id = *write([&](Transaction& t) { return addRacket(t, {"fresh", fresh.customer, fresh.frame, fresh.mark}); });
    for (Job& job : fake.rows.jobs) {
        if (job.racket == racketOf("Brockwell", "Aldermoor 98").racket.id) {
            job.method = Method::TwoPiece; // the other racket says nothing of a side
        }
    }
    const RacketSummary other = racketOf("Brockwell", "Aldermoor 110", "new");
    IntakeDraft draft = draftFor(other, "L", "L", "50", "50");
    draft.method = Method::OnePiece;
    EXPECT_EQ(preview(draft)->shortSide->from, SideFrom::Usual);
    EXPECT_EQ(preview(draft)->shortSide->side, Side::Left);
    for (Job& job : fake.rows.jobs) {
        if (job.racket == racketOf("Brockwell", "Aldermoor 98").racket.id) {
            job.method = Method::OnePiece;
            job.shortSide = Side::Right;
        }
    }
    EXPECT_EQ(preview(draft)->shortSide->from, SideFrom::Twin);
    EXPECT_EQ(preview(draft)->shortSide->side, Side::Right);
    EXPECT_EQ(preview(draft)->shortSide->because, "Aldermoor 98") << "it has no mark";
}

TEST_F(Intake, NoLotIsSaidAndNoPriceIsRefused) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    ASSERT_TRUE(correct("L-3", metres(4)));
    const auto shown = preview(draftFor(racket, "L", "L", "52", "50"));
    ASSERT_TRUE(shown.has_value());
    EXPECT_FALSE(shown->pieces.front().lot.has_value());
    EXPECT_EQ(shown->pieces.front().fit, Fit::DoesNotFit);
    EXPECT_TRUE(shown->pieces.front().freeAfter.isNegative());

    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.extras = {{"gold plate", 1}};
    EXPECT_EQ(refusalOf(preview(draft)), Code::Missing);
    fake.rows.priceLists.clear();
    EXPECT_EQ(preview(draftFor(racket, "L", "L", "52", "50")).error().text("what"), "price list");
}

TEST_F(Intake, RushGoesAheadOfWhatCanWaitAndBreaksNoPromise) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    const Instant behindAll = preview(draft)->promise;
    draft.rush = true;
    EXPECT_LE(preview(draft)->promise, behindAll);
    for (Job& job : fake.rows.jobs) {
        job.promised = kNow + std::chrono::days(3); // everybody can wait
    }
    const Instant atOnce = preview(draft)->promise;
    EXPECT_LT(atOnce, behindAll);
    for (Job& job : fake.rows.jobs) {
        job.promised = std::nullopt;
    }
    EXPECT_EQ(preview(draft)->promise, atOnce) << "nothing was promised, nothing is broken";
    for (Job& job : fake.rows.jobs) {
        job.promised = kNow - std::chrono::days(1);
    }
    EXPECT_EQ(preview(draft)->promise, atOnce) << "what is late already does not hold it up";
    const auto queue = read([](Transaction& t) { return benchQueue(t); });
    for (std::size_t i = 0; i < queue->size(); ++i) { // two at a time, 25 minutes each: not a minute to spare
        const auto done = kNow + std::chrono::minutes(25) * static_cast<int>(i / 2 + 1);
        std::ranges::find(fake.rows.jobs, std::optional((*queue)[i].id), &Job::id)->promised = done;
    }
    EXPECT_EQ(preview(draft)->promise, behindAll) << "it would break a promise anywhere earlier";
}

} // namespace
} // namespace rw::desk::test
