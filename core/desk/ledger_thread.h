// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/world_error.h"
#include "core/desk/unit_of_work.h"

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <cstdint>
#include <deque>
#include <exception>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

namespace rw::desk {

/// Lets who asked for work take it back. Shared between the asker and the ledger's thread.
class CancelToken {
public:
    void cancel() { m_cancelled->store(true); }
    [[nodiscard]] bool isCancelled() const { return m_cancelled->load(); }

private:
    std::shared_ptr<std::atomic<bool>> m_cancelled = std::make_shared<std::atomic<bool>>(false);
};

/// The thread that owns the ledger. Use cases are handed to it and done one after the other in the order they came;
/// their values come back through a poster, which the desktop points at its event loop. The destructor finishes the
/// work at hand, drops what waits, closes the ledger and joins.
class LedgerThread {
public:
    /// Run on the thread before the first work, and again for the next work after it threw or the ledger was lost
    /// (LedgerLost): a server that is back is found again. May throw WorldError.
    using Open = std::function<std::unique_ptr<Ledger>()>;
    using Post = std::function<void(std::function<void()>)>; ///< called on the thread; must be thread-safe

    LedgerThread(Open open, Post post);
    ~LedgerThread();
    LedgerThread(const LedgerThread&) = delete;
    LedgerThread& operator=(const LedgerThread&) = delete;

    /// Runs `work` (Result<T>(Transaction&)) in one transaction, then posts `done` (void(Result<T>)); when the world
    /// broke, posts `failed` (void(std::exception_ptr)) instead. Cancelled work posts nothing; cancelled before its
    /// turn, it is not begun. All three are copyable.
    template<class Work, class Done, class Failed>
    void run(Access access, CancelToken token, Work work, Done done, Failed failed) {
        Task task;
        task.work = [this, access, token, work = std::move(work), done = std::move(done)](Ledger& ledger) mutable {
            auto result = inTransaction(ledger, access, work);
            if (!token.isCancelled()) {
                m_post([done, result = std::move(result)]() mutable { done(std::move(result)); });
            }
        };
        task.failed = std::move(failed);
        task.token = std::move(token);
        enqueue(std::move(task));
    }

    /// From now on looks every `interval` whether another connection changed the ledger (Ledger::changeCount) and posts
    /// `changed` when it did, when the ledger is found to be lost, and when it was opened anew. Only looks while it is
    /// open and nothing waits.
    void watchChanges(std::chrono::milliseconds interval, std::function<void()> changed);

private:
    struct Task {
        std::function<void(Ledger&)> work;
        std::function<void(std::exception_ptr)> failed;
        CancelToken token;
    };
    struct Watch {
        std::chrono::milliseconds interval;
        std::function<void()> changed;
    };

    void enqueue(Task task);
    void loop();
    [[nodiscard]] std::optional<Task> nextTask(); ///< waits; nothing: it is time to look for changes, or to stop
    void perform(const Task& task);
    void lookForChanges();

    Open m_open;
    Post m_post;
    std::unique_ptr<Ledger> m_ledger; ///< touched by the thread only
    std::int64_t m_seenChanges = 0;   ///< likewise
    bool m_openedBefore = false;      ///< likewise
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::deque<Task> m_tasks;
    std::optional<Watch> m_watch;
    bool m_stopping = false;
    std::thread m_thread; ///< last: it uses all of the above
};

} // namespace rw::desk
