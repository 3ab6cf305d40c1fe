// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/files/ledger_guard.h"

#include <filesystem>
#include <system_error>

namespace rw::app {

Result<void> mustNotReplaceLedger(const std::string& path, const std::string& ledger) {
    namespace fs = std::filesystem;
    std::error_code ignored;
    // The log lies beside the file itself, not beside a link to it.
    const fs::path resolved = fs::weakly_canonical(ledger, ignored);
    for (const std::string& name : {ledger, resolved.string()}) {
        for (const char* beside : {"", "-wal", "-shm"}) {
            if (fs::equivalent(path, name + beside, ignored)) {
                return refuse(Code::FileUnwritable,
                              {{"file", path}, {"reason", "it is the ledger, which nothing else may replace"}});
            }
        }
    }
    return {};
}

} // namespace rw::app
