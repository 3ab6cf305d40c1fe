// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/desk_runner.h"

namespace rw::ui {

/// Runs use cases at once on the calling thread, on a ledger that belongs to it. For pictures and tests, where nobody
/// waits at a keyboard.
class DirectDeskRunner final : public DeskRunner {
public:
    explicit DirectDeskRunner(desk::Ledger& ledger)
        : m_ledger(ledger) {}

    void run(desk::Access access, desk::CancelToken token, Work work, Done done, Failed failed) override;
    void watchChanges(std::function<void()>) override {} ///< nobody else writes to it

private:
    desk::Ledger& m_ledger;
};

} // namespace rw::ui
