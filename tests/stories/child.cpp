// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/child.h"

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <stdexcept>

extern char** environ; // NOLINT(readability-redundant-declaration)

namespace rw::stories {

namespace {
void check(int error, const char* what) {
    if (error != 0) {
        throw std::runtime_error(std::string(what) + ": " + std::strerror(error));
    }
}

std::array<int, 2> makePipe() {
    std::array<int, 2> ends{};
    check(pipe2(ends.data(), O_CLOEXEC) == 0 ? 0 : errno, "pipe");
    return ends;
}
} // namespace

Child::Child(const std::string& program, const std::vector<std::string>& arguments) {
    const auto out = makePipe();
    const auto in = makePipe();
    posix_spawn_file_actions_t actions;
    check(posix_spawn_file_actions_init(&actions), "spawn");
    check(posix_spawn_file_actions_adddup2(&actions, in[0], STDIN_FILENO), "spawn");
    check(posix_spawn_file_actions_adddup2(&actions, out[1], STDOUT_FILENO), "spawn");
    std::vector<char*> argv{const_cast<char*>(program.c_str())};
    for (const std::string& argument : arguments) {
        argv.push_back(const_cast<char*>(argument.c_str()));
    }
    argv.push_back(nullptr);
    const int error = posix_spawn(&m_pid, program.c_str(), &actions, nullptr, argv.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    ::close(out[1]);
    ::close(in[0]);
    m_fromChild = out[0];
    m_toChild = in[1];
    check(error, program.c_str());
}

Child::~Child() {
    if (m_pid > 0 && !m_end) {
        kill();
        wait();
    }
    ::close(m_fromChild);
    ::close(m_toChild);
}

std::optional<std::string> Child::nextLine() {
    for (;;) {
        if (const auto end = m_heard.find('\n'); end != std::string::npos) {
            std::string line = m_heard.substr(0, end);
            m_heard.erase(0, end + 1);
            return line;
        }
        std::array<char, 4096> buffer{};
        const ssize_t got = ::read(m_fromChild, buffer.data(), buffer.size());
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got <= 0) {
            return std::nullopt;
        }
        m_heard.append(buffer.data(), static_cast<std::size_t>(got));
    }
}

void Child::say(const std::string& line) {
    const std::string whole = line + "\n";
    check(::write(m_toChild, whole.data(), whole.size()) == static_cast<ssize_t>(whole.size()) ? 0 : errno, "write");
}

void Child::kill() { ::kill(m_pid, SIGKILL); }

int Child::wait() {
    if (!m_end) {
        int status = 0;
        while (waitpid(m_pid, &status, 0) < 0 && errno == EINTR) {
        }
        m_end = WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
    }
    return *m_end;
}

} // namespace rw::stories
