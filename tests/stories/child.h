// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <optional>
#include <string>
#include <vector>

namespace rw::stories {

/// Another process that speaks in lines and hears lines. Killed and reaped with this object when it still runs.
class Child {
public:
    Child(const std::string& program, const std::vector<std::string>& arguments);
    ~Child();
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    /// The next whole line, waiting for it; nothing when there is none any more.
    [[nodiscard]] std::optional<std::string> nextLine();
    void say(const std::string& line);
    void kill();
    /// Waits for its end: its exit code, or minus the signal that ended it.
    int wait();

private:
    pid_t m_pid = -1;
    int m_fromChild = -1;
    int m_toChild = -1;
    std::string m_heard;
    std::optional<int> m_end;
};

} // namespace rw::stories
