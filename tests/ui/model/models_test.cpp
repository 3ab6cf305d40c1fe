// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/stockroom.h"
#include "core/desk/undo.h"
#include "tests/ui/support/at_work.h"
#include "ui/model/history_model.h"
#include "ui/model/job_line_model.h"
#include "ui/model/lot_life_model.h"
#include "ui/model/people_model.h"
#include "ui/model/racket_choice_model.h"
#include "ui/model/shelf_model.h"

#include <QAbstractItemModelTester>

namespace rw::ui::test {
namespace {

/// Watches a model through everything a test does to it; what Qt finds wrong becomes a warning, and a warning fails.
class Watched {
public:
    explicit Watched(QAbstractItemModel* model)
        : m_tester(model, QAbstractItemModelTester::FailureReportingMode::Warning) {}

private:
    QAbstractItemModelTester m_tester;
};

class Models : public AtWork {
protected:
    std::vector<desk::PersonFound> people(std::string_view text) {
        return *desk::inTransaction(ledger, desk::Access::Read,
                                    [&](desk::Transaction& t) { return desk::findPeople(t, text); });
    }
    template<class UseCase>
    auto ask(UseCase useCase) {
        return *desk::inTransaction(ledger, desk::Access::Read, useCase);
    }
    template<class UseCase>
    void done(UseCase useCase) {
        ASSERT_TRUE(desk::inTransaction(ledger, desk::Access::Write, useCase).has_value());
    }
};

QString said(const QAbstractItemModel& model, int row, int role = Qt::DisplayRole) {
    return model.index(row, 0).data(role).toString();
}

TEST_F(Models, PeopleAndTheOfferToAddSomebody) {
    PeopleModel model;
    const Watched watched(&model);
    model.setFound(people("petra"), QStringLiteral("petra"));
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(said(model, 0), QStringLiteral("Petra Lindobi"));
    EXPECT_EQ(said(model, 0, DetailRole), QStringLiteral("Aldermoor 98 B, Aldermoor 98 A"));
    EXPECT_EQ(said(model, 0, AsideRole), QStringLiteral("07700 900417"));
    EXPECT_EQ(said(model, 1), QStringLiteral("+ somebody new: petra"));
    model.setFound({}, {});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(Models, RacketsSayWhatWasStrungLast) {
    RacketChoiceModel model;
    const Watched watched(&model);
    const auto petra = people("petra").front();
    model.setNow(kThursday, QTimeZone::utc());
    model.setRows({{petra.rackets[1], std::nullopt, {}},
                   {std::nullopt, petra.rackets[1].frame, {}},
                   {std::nullopt, std::nullopt, QStringLiteral("Fennel")}});
    EXPECT_EQ(said(model, 0), QStringLiteral("Aldermoor 98 · A"));
    EXPECT_EQ(said(model, 0, DetailRole), QStringLiteral("last 54/52 lb asked and strung, Tue 20 Jan"));
    EXPECT_EQ(said(model, 1), QStringLiteral("+ another Aldermoor 98"));
    EXPECT_EQ(said(model, 2), QStringLiteral("+ a frame nobody has heard of: Fennel"));
    const auto ivo = people("castelmere").front();
    ASSERT_TRUE(ivo.rackets.back().here);
    model.setRows({{ivo.rackets.back(), std::nullopt, {}}});
    EXPECT_EQ(said(model, 0, DetailRole), QStringLiteral("here: No. 2122, ◐ on the machine, promised today 12:00"));
}

TEST_F(Models, TheQueueSaysAStateWithAWordAndAShape) {
    JobLineModel model;
    const Watched watched(&model);
    model.setNow(kThursday, QTimeZone::utc());
    model.setRows(ask(desk::benchQueue));
    const int row = model.rowOf(model.rows()[2].id);
    EXPECT_EQ(row, 2);
    EXPECT_EQ(said(model, 2), QStringLiteral("2122 · Aldermoor 98 A"));
    EXPECT_EQ(said(model, 2, DetailRole), QStringLiteral("◐ on the machine · Ivo Castelmere · L · 55/53 lb"));
    EXPECT_EQ(said(model, 2, AsideRole), QStringLiteral("today 12:00"));
    EXPECT_EQ(model.rowOf(JobId::of(999'999)), -1);
}

TEST_F(Models, HistoryLeadsWithThePairThatCounts) {
    HistoryModel model;
    const Watched watched(&model);
    const auto jun = people("hallerby").front();
    model.setRows(ask([&](desk::Transaction& t) { return desk::historyOfCustomer(t, *jun.customer.id); }));
    ASSERT_GE(model.rowCount(), 1);
    EXPECT_EQ(model.pair(0), QStringLiteral("10.5/11.5 kg"));
    EXPECT_TRUE(model.facts(0).startsWith(QStringLiteral("asked 24/26 lb, strung 10.5/11.5 kg")));
}

TEST_F(Models, HistoryDoesNotCallACutLostThatWasTakenBack) {
    const Job job = look([](desk::Transaction& t) { return *t.jobs().get(*t.jobs().byNumber(2122)); });
    const By by = shift.by("bench");
    const auto cut = [&](int attempt) {
        done([&](desk::Transaction& t) {
            return desk::confirmCut(t,
                                    {*job.id, PieceRole::Whole, attempt, std::nullopt, metres(10.8), std::nullopt, by});
        });
    };
    cut(1);
    done([&](desk::Transaction& t) {
        return desk::loseLength(t, {*job.id, PieceRole::Whole, 1, LostReason::Kinked, by});
    });
    cut(2);
    done([&](desk::Transaction& t) { return desk::takeBackCut(t, {*job.id, PieceRole::Whole, 2, by}); });
    HistoryModel model;
    const Watched watched(&model);
    model.setRows(ask([&](desk::Transaction& t) { return desk::historyOfRacket(t, job.racket); }));
    EXPECT_TRUE(model.facts(0).contains(QStringLiteral("10.8 m lost, kinked; 10.8 m taken back")))
        << model.facts(0).toStdString();
}

TEST_F(Models, TheShelfIsOneBoardAString) {
    ShelfModel model;
    const Watched watched(&model);
    std::vector<desk::ShelfString> shelf = ask(desk::shelf);
    shelf[1].ahead.emplace().runningShort = true;
    model.setShelf(std::move(shelf));
    ASSERT_EQ(model.rowCount(), 4);
    EXPECT_EQ(model.columnCount(), 4); // the label, and K's three reels
    EXPECT_EQ(said(model, 1),
              QStringLiteral("L Larkspun 130, natural; 48.7 m left, 32.4 m promised, 16.3 m free; about 14.9 m "
                             "usable; running short: 1 whole job free; order now"));
    EXPECT_EQ(model.index(2, 1).data().toString(),
              QStringLiteral("T-1: 27.6 m left, nothing promised: 2 jobs; a third would be 0.3 m short: batch 2204"));
    EXPECT_EQ(model.lotAt(model.index(2, 2)), nullptr);
    EXPECT_FALSE(model.flags(model.index(2, 2)) & Qt::ItemIsSelectable);
    EXPECT_TRUE(model.indexOf(*lot("K-4").id).isValid());
    EXPECT_FALSE(model.indexOf(LotId::of(999'999)).isValid());
    model.setShelf({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(Models, TheLifeOfALotLineByLine) {
    LotLifeModel model;
    const Watched watched(&model);
    const auto life = ask([&](desk::Transaction& t) { return desk::lotLife(t, *lot("K-2").id); });
    std::vector<LifeRow> rows;
    for (std::size_t i = 0; i < life.movements.size(); ++i) {
        rows.push_back({life.movements[i], life.jobNumbers[i], QStringLiteral("Ines Varholt")});
    }
    model.setRows(rows);
    EXPECT_EQ(said(model, 0), QStringLiteral("+54.3 m, received"));
    EXPECT_EQ(said(model, model.rowCount() - 1), QStringLiteral("−0.1 m, measured"));
}

} // namespace
} // namespace rw::ui::test
