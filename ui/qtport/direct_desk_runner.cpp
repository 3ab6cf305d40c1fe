// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/qtport/direct_desk_runner.h"

namespace rw::ui {

void DirectDeskRunner::run(desk::Access access, desk::CancelToken token, Work work, Done done, Failed failed) {
    if (token.isCancelled()) {
        return;
    }
    std::optional<Result<void>> result;
    try {
        result = desk::inTransaction(m_ledger, access, work);
    } catch (const WorldError&) {
        failed(std::current_exception());
        return;
    }
    done(std::move(*result));
}

} // namespace rw::ui
