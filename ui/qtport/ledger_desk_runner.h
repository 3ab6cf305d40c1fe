// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/ledger_thread.h"
#include "ui/port/desk_runner.h"

#include <QObject>

#include <memory>

namespace rw::ui {

/// The real runner: use cases go to the ledger's own thread, answers come back through the event loop of the thread
/// that made this object. Answers still on their way when it is destroyed are dropped.
class LedgerDeskRunner final : public DeskRunner {
public:
    explicit LedgerDeskRunner(desk::LedgerThread::Open open);
    ~LedgerDeskRunner() override;

    void run(desk::Access access, desk::CancelToken token, Work work, Done done, Failed failed) override;
    void watchChanges(std::function<void()> changed) override;

private:
    std::unique_ptr<QObject> m_home; ///< lives on the asking thread; answers are events for it
    std::unique_ptr<desk::LedgerThread> m_thread;
};

} // namespace rw::ui
