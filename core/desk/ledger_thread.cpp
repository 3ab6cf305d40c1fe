// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/ledger_thread.h"

namespace rw::desk {

LedgerThread::LedgerThread(Open open, Post post)
    : m_open(std::move(open))
    , m_post(std::move(post))
    , m_thread([this] { loop(); }) {}

LedgerThread::~LedgerThread() {
    {
        const std::lock_guard lock(m_mutex);
        m_stopping = true;
        m_tasks.clear();
    }
    m_wake.notify_one();
    m_thread.join();
}

void LedgerThread::watchChanges(std::chrono::milliseconds interval, std::function<void()> changed) {
    {
        const std::lock_guard lock(m_mutex);
        m_watch = Watch{interval, std::move(changed)};
    }
    m_wake.notify_one();
}

void LedgerThread::enqueue(Task task) {
    {
        const std::lock_guard lock(m_mutex);
        m_tasks.push_back(std::move(task));
    }
    m_wake.notify_one();
}

void LedgerThread::loop() {
    for (;;) {
        if (const std::optional<Task> task = nextTask()) {
            perform(*task);
        } else {
            const std::lock_guard lock(m_mutex);
            if (m_stopping) {
                break;
            }
        }
        lookForChanges();
    }
    m_ledger.reset();
}

std::optional<LedgerThread::Task> LedgerThread::nextTask() {
    std::unique_lock lock(m_mutex);
    const auto somethingToDo = [this] { return m_stopping || !m_tasks.empty(); };
    if (m_watch) {
        m_wake.wait_for(lock, m_watch->interval, somethingToDo);
    } else {
        m_wake.wait(lock, [&] { return somethingToDo() || m_watch.has_value(); });
    }
    if (m_stopping || m_tasks.empty()) {
        return std::nullopt;
    }
    Task task = std::move(m_tasks.front());
    m_tasks.pop_front();
    return task;
}

void LedgerThread::perform(const Task& task) {
    if (task.token.isCancelled()) {
        return;
    }
    try {
        if (!m_ledger) {
            m_ledger = m_open();
            // Nobody knows what others did since it was lost: the next look finds a change.
            m_seenChanges = m_ledger->changeCount() - (m_openedBefore ? 1 : 0);
            m_openedBefore = true;
        }
        task.work(*m_ledger);
    } catch (...) {
        const std::exception_ptr error = std::current_exception();
        try {
            throw;
        } catch (const LedgerLost&) {
            m_ledger.reset();
        } catch (...) { // NOLINT(bugprone-empty-catch): told below, like every error
        }
        if (!task.token.isCancelled()) {
            m_post([failed = task.failed, error] { failed(error); });
        }
    }
}

void LedgerThread::lookForChanges() {
    std::function<void()> changed;
    {
        const std::lock_guard lock(m_mutex);
        if (!m_watch || !m_tasks.empty() || m_stopping || !m_ledger) {
            return;
        }
        changed = m_watch->changed;
    }
    try {
        const std::int64_t count = m_ledger->changeCount();
        if (count != m_seenChanges) {
            m_seenChanges = count;
            m_post(changed);
        }
    } catch (const WorldError&) {
        m_ledger.reset(); // whoever is told asks again: that opens it anew, or says that it cannot
        m_post(changed);
    }
}

} // namespace rw::desk
