// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/world_error.h"
#include "tests/ui/support/at_work.h"
#include "ui/presenter/export_presenter.h"
#include "ui/presenter/owner_presenter.h"

#include <QCoreApplication>

namespace rw::ui::test {
namespace {

/// Keeps what it was given, refuses or breaks where the test says so, and lets the test look in between.
class KeptTables final : public TableFiles {
public:
    Result<bool> write(const QString& folder, const std::vector<desk::LedgerTable>& tables, Currency,
                       const GoOn& goOn) const override {
        int written = 0;
        for (const desk::LedgerTable& table : tables) {
            if (!goOn(written)) {
                return false;
            }
            if (table.name == refuses) {
                return refuse(Code::FileUnwritable,
                              {{"file", folder.toStdString()}, {"reason", std::string("no room")}});
            }
            if (table.name == breaks) {
                throw FileLost("lots.csv: no space left on device");
            }
            kept.push_back(table.name);
            ++written;
            if (meanwhile) {
                meanwhile();
            }
        }
        return goOn(written);
    }

    mutable std::vector<std::string> kept;
    std::string refuses;
    std::string breaks;
    std::function<void()> meanwhile;
};

class Exporting : public AtWork {
protected:
    Exporting() {
        ledger.rows.tables = {{"jobs", {{"job", desk::ColumnKind::Number}}, {{std::int64_t{1}}, {std::int64_t{2}}}},
                              {"lots", {{"tag", desk::ColumnKind::Words}}, {{std::string("K-2")}}},
                              {"payments", {{"way", desk::ColumnKind::Words}}, {}}};
        QObject::connect(&exporting, &ExportPresenter::written,
                         [this](const ExportPresenter::Written& what) { written = what; });
        QObject::connect(&exporting, &ExportPresenter::stopped, [this] { ++stops; });
        QObject::connect(&exporting, &ExportPresenter::refused, [this](const QString& sentence) { why = sentence; });
    }
    void begin() { exporting.begin(QStringLiteral("/books"), true); }

    KeptTables files;
    ExportPresenter exporting{runner, shift, files, std::chrono::milliseconds(0)};
    std::optional<ExportPresenter::Written> written;
    int stops = 0;
    QString why;
};

TEST_F(Exporting, WritesEveryTable) {
    begin();
    ASSERT_TRUE(written);
    EXPECT_EQ(files.kept, (std::vector<std::string>{"jobs", "lots", "payments"}));
    EXPECT_EQ(written->files, 3);
    EXPECT_EQ(written->rows, 3);
    EXPECT_FALSE(exporting.isUnderWay());
}

TEST_F(Exporting, TellsHowFarItIsOnceItTakesLong) {
    runner.held = true;
    begin();
    EXPECT_TRUE(exporting.isUnderWay());
    EXPECT_FALSE(exporting.isSlow());
    while (!exporting.isSlow()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    EXPECT_EQ(exporting.filesInAll(), 0);
    int most = 0;
    files.meanwhile = [&] { most = std::max(most, exporting.filesDone()); };
    runner.release();
    EXPECT_EQ(most, 2) << "the third is counted when it is written";
    EXPECT_FALSE(exporting.isSlow());
}

TEST_F(Exporting, IsStoppedBetweenTwoFiles) {
    files.meanwhile = [this] { exporting.stop(); };
    begin();
    EXPECT_EQ(files.kept, (std::vector<std::string>{"jobs"}));
    EXPECT_EQ(stops, 1);
    EXPECT_FALSE(written);
    EXPECT_FALSE(exporting.isUnderWay());
    files.meanwhile = nullptr;
    begin();
    EXPECT_TRUE(written) << "and can be begun again";
}

TEST_F(Exporting, OneAtATime) {
    runner.held = true;
    begin();
    begin();
    runner.release();
    EXPECT_EQ(files.kept.size(), 3U);
}

TEST_F(Exporting, AFolderThatTakesNothingIsNoTroubleOfTheLedgers) {
    files.refuses = "lots";
    begin();
    EXPECT_TRUE(why.contains(QStringLiteral("no room"))) << why.toStdString();
    files.refuses.clear();
    files.breaks = "lots";
    begin();
    EXPECT_TRUE(why.contains(QStringLiteral("lots.csv"))) << why.toStdString();
    EXPECT_TRUE(shift.trouble().isEmpty());
    EXPECT_FALSE(written);
    EXPECT_FALSE(exporting.isUnderWay());
}

TEST_F(Exporting, ALedgerThatIsGoneEndsIt) {
    runner.world = HeldDeskRunner::World::LostBefore;
    begin();
    EXPECT_FALSE(exporting.isUnderWay());
    EXPECT_FALSE(shift.trouble().isEmpty());
}

} // namespace
} // namespace rw::ui::test
