// SPDX-License-Identifier: GPL-3.0-or-later
// The other process of the stories. It works on a ledger and keeps a journal on its standard output, a line before each
// command ("intend ...") and one after it ("done ...", "refused ..."), for whoever looks at the ledger when it was
// killed.
#include "tests/stories/dying_ledger.h"
#include "tests/stories/kill_moments.h"
#include "tests/stories/step.h"
#include "tests/stories/story.h"
#include "tests/stories/working_day.h"

#include <QCoreApplication>

#include <unistd.h>

#include <chrono>
#include <exception>
#include <functional>
#include <iostream>
#include <random>
#include <string>
#include <vector>

using namespace rw;
using namespace rw::stories;

namespace {

/// One write() a line, not above what a pipe takes whole: a line is there or it is not, whenever the process dies.
void journal(const std::string& line) {
    const std::string whole = line + "\n";
    if (::write(STDOUT_FILENO, whole.data(), whole.size()) != static_cast<ssize_t>(whole.size())) {
        _exit(3);
    }
}

void waitForALine() {
    std::string line;
    std::getline(std::cin, line);
}

bool keepJournal(desk::Ledger& ledger, const Step& step, const std::function<void()>& before,
                 const std::function<void()>& after) {
    journal("intend " + step.text());
    before();
    const auto done = perform(ledger, step);
    after();
    journal((done ? "done " : "refused ") + step.text());
    return done.has_value();
}

/// Keeps the ledger's answer to itself for up to three milliseconds: a kill then meets a command that was kept and of
/// which nobody was told, as often as one that was not.
class SlowToTell {
public:
    explicit SlowToTell(std::uint64_t seed)
        : m_random(seed) {}
    void operator()() { spinFor(std::chrono::microseconds(m_random() % 3'000)); }

private:
    std::mt19937_64 m_random;
};

/// day ADDRESS PREFIX SEED: first what was left undone, then new jobs without end. With JOBS as one more argument: new
/// jobs only, so many of them, begun when a line is heard.
int day(const std::vector<std::string>& arguments) {
    const auto ledger = openAt(arguments.at(1));
    journal("open");
    SlowToTell slow(std::stoull(arguments.at(3)));
    WorkingDay work(arguments.at(2), std::stoull(arguments.at(3)), [&](const Step& step) {
        return keepJournal(
            *ledger, step, [] {}, std::ref(slow));
    });
    if (arguments.size() == 4) {
        work.takeUpWhatWasLeft(*ledger);
        for (;;) {
            work.nextJob(*ledger);
        }
    }
    waitForALine();
    for (std::size_t jobs = std::stoul(arguments.at(4)); jobs > 0; --jobs) {
        work.nextJob(*ledger);
    }
    return 0;
}

/// together ADDRESS JOBS: the same jobs as the other one that was started with it, each command given when a line is
/// heard. Somebody else's hand is met as a refusal, and the next command is given all the same.
int together(const std::vector<std::string>& arguments) {
    const auto ledger = openAt(arguments.at(1));
    journal("open");
    WorkingDay work("both", 1, [&](const Step& step) {
        (void)keepJournal(*ledger, step, waitForALine, [] {});
        return true;
    });
    for (std::size_t jobs = std::stoul(arguments.at(2)); jobs > 0; --jobs) {
        work.nextJob(*ledger);
    }
    return 0;
}

/// die before|after ADDRESS STEP: gives one command and is gone, just before or just after the ledger keeps it.
int die(const std::vector<std::string>& arguments) {
    DyingLedger ledger(openAt(arguments.at(2)), arguments.at(1) == "before" ? Dies::BeforeCommit : Dies::AfterCommit);
    (void)perform(ledger, Step::parse(arguments.at(3)));
    return 4; // still alive
}

/// create ADDRESS: makes a ledger where none is.
int create(const std::vector<std::string>& arguments) {
    journal("begin");
    const auto ledger = openAt(arguments.at(1));
    journal("open");
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    try {
        const std::string mode = arguments.empty() ? "" : arguments.front();
        return mode == "day"        ? day(arguments)
               : mode == "together" ? together(arguments)
               : mode == "die"      ? die(arguments)
               : mode == "create"   ? create(arguments)
                                    : 2;
    } catch (const std::exception& error) {
        std::cerr << error.what() << "\n";
        return 5;
    }
}
