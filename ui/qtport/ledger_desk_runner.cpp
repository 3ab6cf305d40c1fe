// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/qtport/ledger_desk_runner.h"

#include <QMetaObject>

#include <chrono>
#include <utility>

namespace rw::ui {

namespace {
/// Somebody who walks from one station to the next finds there what was done at the first.
constexpr std::chrono::seconds kLookEvery{2};
} // namespace

LedgerDeskRunner::LedgerDeskRunner(desk::LedgerThread::Open open)
    : m_home(std::make_unique<QObject>())
    , m_thread(
          std::make_unique<desk::LedgerThread>(std::move(open), [home = m_home.get()](std::function<void()> answer) {
              QMetaObject::invokeMethod(home, std::move(answer), Qt::QueuedConnection);
          })) {}

// The thread is joined before its answers' home goes.
LedgerDeskRunner::~LedgerDeskRunner() { m_thread.reset(); }

void LedgerDeskRunner::run(desk::Access access, desk::CancelToken token, Work work, Done done, Failed failed) {
    m_thread->run(access, std::move(token), std::move(work), std::move(done), std::move(failed));
}

void LedgerDeskRunner::watchChanges(std::function<void()> changed) {
    m_thread->watchChanges(kLookEvery, std::move(changed));
}

} // namespace rw::ui
