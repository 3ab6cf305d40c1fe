// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/scene_steps.h"
#include "app/desktop/station_scenes.h"
#include "core/desk/bench.h"
#include "core/desk/change_asked.h"
#include "core/desk/consent.h"
#include "core/desk/job_course.h"
#include "core/desk/payment.h"
#include "ui/bench/bench_station.h"
#include "ui/bench/bench_strips.h"
#include "ui/counter/counter_station.h"
#include "ui/counter/rack_sheet.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/shell/main_window.h"
#include "ui/widgets/length_edit.h"

#include <QApplication>
#include <QKeyEvent>

#include <cassert>

namespace rw::desktop {

namespace {
constexpr std::int64_t kOnBenchA = 2122; // asked 55/53 lb, one piece off L-3

JobId jobNumbered(desk::Transaction& ledger, std::int64_t number) { return ledger.jobs().byNumber(number).value(); }

By counter(desk::Transaction& ledger) {
    const auto logged = ledger.jobs().get(jobNumbered(ledger, kOnBenchA))->logged;
    return {*ledger.shop().staff().front().id, "counter", logged + std::chrono::hours(23)};
}

Tension lb(std::int64_t pounds) { return Tension::fromHundredths(pounds * 100, TensionUnit::Pound).value(); }

/// The customer of 2122 has another wish on the phone.
Result<void> ask(desk::Transaction& ledger, const TensionPair& wanted) {
    const JobId job = jobNumbered(ledger, kOnBenchA);
    const auto changed = desk::changeAsked(ledger, {job, ledger.jobs().get(job)->asked, wanted, counter(ledger)});
    return changed ? Result<void>() : tl::unexpected(changed.error());
}

Result<void> agree(desk::Transaction& ledger) {
    const auto agreed =
        desk::agreeAboveMarked(ledger, {jobNumbered(ledger, kOnBenchA), "his coach", "", counter(ledger)});
    return agreed ? Result<void>() : tl::unexpected(agreed.error());
}

Result<void> stepTo(desk::Transaction& ledger, BenchStep step) {
    const auto moved =
        desk::moveStep(ledger, {jobNumbered(ledger, kOnBenchA), BenchStep::LookOver, step, counter(ledger)});
    return moved ? Result<void>() : tl::unexpected(moved.error());
}

/// Somebody paid for 2122, and it is withdrawn all the same.
Result<void> withdrawPaid(desk::Transaction& ledger) {
    const JobId job = jobNumbered(ledger, kOnBenchA);
    const Money amount = Money::fromMinor(2000, ledger.shop().currency());
    const auto paid = desk::takePayment(ledger, {"deposit", job, amount, "card", counter(ledger)});
    const auto gone = paid ? desk::withdrawJob(ledger, {job, counter(ledger)}) : tl::unexpected(paid.error());
    return gone ? Result<void>() : tl::unexpected(gone.error());
}

QWidget* atTheBench(ui::MainWindow& window) {
    window.goTo(QStringLiteral("bench"));
    assert(window.bench()->presenter().card()->job.number == kOnBenchA);
    return &window;
}

std::vector<Scene> ownScenes() {
    return {
        {QStringLiteral("bench-next"), true, [](ui::MainWindow& window) { return toBench(window, 0); }},
        {QStringLiteral("bench-taken"), true, [](ui::MainWindow& window) { return toBench(window, 1); }},
        {QStringLiteral("bench-cutting"), true, [](ui::MainWindow& window) { return toBench(window, 2); }},
        {QStringLiteral("bench-cut"), true, [](ui::MainWindow& window) { return toBench(window, 3); }},
        {QStringLiteral("bench-lost"), true,
         [](ui::MainWindow& window) {
             toBench(window, 3);
             window.bench()->openLost();
             return static_cast<QWidget*>(&window);
         }},
        {QStringLiteral("bench-finishing"), true, [](ui::MainWindow& window) { return toBench(window, 4); }},
        {QStringLiteral("bench-strung"), true, [](ui::MainWindow& window) { return toBench(window, 5); }},
    };
}

/// After other stations have had their say: what is not agreed, what was changed, an end that is too short, what is
/// taken back.
std::vector<Scene> otherStationScenes() {
    return {
        {QStringLiteral("bench-look-over"), true, atTheBench},
        {QStringLiteral("bench-not-agreed"), true, atTheBench,
         [](desk::Transaction& ledger) {
             return ask(ledger, {lb(64), lb(62)});
         }},
        {QStringLiteral("bench-agreed-crosses"), true,
         [](ui::MainWindow& window) {
             atTheBench(window);
             window.bench()->presenter().nod();
             return static_cast<QWidget*>(&window);
         },
         [](desk::Transaction& ledger) {
             auto done = ask(ledger, {lb(64), lb(62)});
             done = done ? agree(ledger) : done;
             return done ? stepTo(ledger, BenchStep::Crosses) : done;
         }},
        {QStringLiteral("bench-changed"), true, atTheBench,
         [](desk::Transaction& ledger) {
             auto done = stepTo(ledger, BenchStep::Mains);
             return done ? ask(ledger, {lb(54), lb(53)}) : done;
         }},
        {QStringLiteral("bench-end-too-short"), true,
         [](ui::MainWindow& window) {
             atTheBench(window);
             window.bench()->next();
             window.bench()->cutStrip()->measuredEdit()->setValue(Length::fromMillimetres(10'500));
             window.bench()->next();
             return static_cast<QWidget*>(&window);
         }},
        {QStringLiteral("bench-beside-another"), true,
         [](ui::MainWindow& window) {
             atTheBench(window);
             auto* queue = window.bench()->queue();
             queue->setCurrentIndex(queue->model()->index(0, 0)); // promised first, and on no machine
             window.bench()->presenter().take();
             return static_cast<QWidget*>(&window);
         }},
        {QStringLiteral("counter-give-back"), true,
         [](ui::MainWindow& window) {
             auto* list = window.counter()->rack()->list();
             window.counter()->showUnpaid();
             QKeyEvent down(QEvent::KeyPress, Qt::Key_Down, Qt::NoModifier);
             QKeyEvent enter(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier);
             QApplication::sendEvent(list, &down);
             QApplication::sendEvent(list, &enter);
             return static_cast<QWidget*>(&window);
         },
         withdrawPaid},
        {QStringLiteral("bench-taking-back"), true,
         [](ui::MainWindow& window) {
             atTheBench(window);
             window.bench()->next();
             window.bench()->next();
             window.bench()->presenter().askLastDone();
             return static_cast<QWidget*>(&window);
         }},
    };
}
} // namespace

std::vector<Scene> benchScenes() { return together({ownScenes(), otherStationScenes()}); }

} // namespace rw::desktop
