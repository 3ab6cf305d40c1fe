// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/world_error.h"
#include "core/desk/unit_of_work.h"

#include <atomic>
#include <condition_variable>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>

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
    using Open = std::function<std::unique_ptr<Ledger>()>; ///< run on the thread; may throw WorldError
    using Post = std::function<void(std::function<void()>)>; ///< called on the thread; must be thread-safe

    LedgerThread(Open open, Post post);
    ~LedgerThread();
    LedgerThread(const LedgerThread&) = delete;
    LedgerThread& operator=(const LedgerThread&) = delete;

    /// Runs `work` (Result<T>(Transaction&)) in one transaction, then posts `done` (void(Result<T>)); when the world
    /// broke, posts `failed` (void(std::exception_ptr)) instead. Cancelled work posts nothing.
    template<class Work, class Done, class Failed>
    void run(Access access, CancelToken token, Work work, Done done, Failed failed) {
        enqueue([this, access, token, work = std::move(work), done = std::move(done),
                 failed = std::move(failed)](Ledger& ledger) mutable {
            if (token.isCancelled()) {
                return;
            }
            auto result = inTransaction(ledger, access, work);
            if (!token.isCancelled()) {
                m_post([done = std::move(done), result = std::move(result)]() mutable { done(std::move(result)); });
            }
        }, failed);
    }

private:
    void enqueue(std::function<void(Ledger&)> task, std::function<void(std::exception_ptr)> failed);
    void loop();

    struct Task {
        std::function<void(Ledger&)> work;
        std::function<void(std::exception_ptr)> failed;
    };
    Open m_open;
    Post m_post;
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::deque<Task> m_tasks;
    bool m_stopping = false;
    std::thread m_thread;
};

} // namespace rw::desk
