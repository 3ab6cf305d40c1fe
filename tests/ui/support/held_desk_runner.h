// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/desk_runner.h"

#include <deque>
#include <functional>
#include <optional>

namespace rw::ui::test {

/// Runs use cases on the calling thread: at once, or when the test lets them go. Can lose the ledger before the work is
/// committed, or after it, as a connection that breaks does.
class HeldDeskRunner final : public DeskRunner {
public:
    enum class World { Whole, LostBefore, LostAfter, Full };

    explicit HeldDeskRunner(desk::Ledger& ledger)
        : m_ledger(ledger) {}

    void run(desk::Access access, desk::CancelToken token, Work work, Done done, Failed failed) override {
        (access == desk::Access::Read ? reads : writes) += 1;
        // What is asked now is done in the world of now, however long its answer is held.
        auto answer = [this, access, token, work = std::move(work), done = std::move(done), failed = std::move(failed),
                       in = world]() mutable {
            if (!token.isCancelled()) {
                act(in, access, work, done, failed);
            }
        };
        if (held) {
            m_waiting.push_back(std::move(answer));
        } else {
            answer();
        }
    }

    void watchChanges(std::function<void()> changed) override { somebodyElseWrote = std::move(changed); }

    void release() {
        held = false;
        while (!m_waiting.empty()) {
            releaseOne();
        }
    }
    /// Lets the oldest go; what it asks in turn is held if this is.
    void releaseOne() {
        auto next = std::move(m_waiting.front());
        m_waiting.pop_front();
        next();
    }
    [[nodiscard]] std::size_t waiting() const { return m_waiting.size(); }

    bool held = false;
    int reads = 0; ///< asked so far
    int writes = 0;
    std::function<void()> somebodyElseWrote; ///< what the runner says then
    World world = World::Whole;

private:
    void act(World in, desk::Access access, Work& work, Done& done, Failed& failed) {
        if (in == World::LostBefore) {
            failed(std::make_exception_ptr(LedgerLost("the ledger is gone")));
            return;
        }
        if (in == World::Full) {
            failed(std::make_exception_ptr(LedgerFull("no room")));
            return;
        }
        auto result = desk::inTransaction(m_ledger, access, work);
        if (in == World::LostAfter) {
            failed(std::make_exception_ptr(LedgerLost("the ledger is gone")));
            return;
        }
        done(std::move(result));
    }

    desk::Ledger& m_ledger;
    std::deque<std::function<void()>> m_waiting;
};

} // namespace rw::ui::test
