// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/other_process.h"

#include <grp.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <filesystem>
#include <stdexcept>

namespace rw::sql::test {

namespace {

constexpr uid_t kPlainUser = 65534; // nobody

std::string resultOf(const std::function<std::string()>& work) {
    try {
        return work();
    } catch (const std::exception& error) {
        return std::string("threw: ") + error.what();
    }
}

} // namespace

std::string inOtherProcess(const std::function<std::string()>& work) {
    std::array<int, 2> pipeEnds{};
    if (pipe(pipeEnds.data()) != 0) {
        throw std::runtime_error("no pipe");
    }
    const pid_t child = fork();
    if (child < 0) {
        throw std::runtime_error("no other process");
    }
    if (child == 0) {
        const auto result = resultOf(work);
        const bool told = write(pipeEnds[1], result.data(), result.size()) == static_cast<ssize_t>(result.size());
        _exit(told ? 0 : 1); // what this process was copied with is not its to clean up
    }
    close(pipeEnds[1]);
    std::string result;
    std::array<char, 4096> part{};
    for (ssize_t got = 0; (got = read(pipeEnds[0], part.data(), part.size())) > 0;) {
        result.append(part.data(), static_cast<std::size_t>(got));
    }
    close(pipeEnds[0]);
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0 ? result : "ended with status " + std::to_string(status);
}

std::string asPlainUser(const std::string& folder, const std::function<std::string()>& work) {
    if (geteuid() != 0) {
        return inOtherProcess(work);
    }
    const auto give = [](const std::filesystem::path& path) {
        if (lchown(path.c_str(), kPlainUser, kPlainUser) != 0) {
            throw std::runtime_error("cannot give away " + path.string());
        }
    };
    give(folder);
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        give(entry.path());
    }
    return inOtherProcess([&]() -> std::string {
        if (setgroups(0, nullptr) != 0 || setgid(kPlainUser) != 0 || setuid(kPlainUser) != 0) {
            return "could not become a plain user";
        }
        return work();
    });
}

} // namespace rw::sql::test
