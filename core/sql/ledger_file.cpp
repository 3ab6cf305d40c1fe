// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/ledger_file.h"

#include "core/sql/new_file.h"
#include "core/sql/open_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <span>
#include <string_view>
#include <utility>

namespace rw::sql {

namespace {

namespace fs = std::filesystem;

/// Source of the layout: sqlite.org, "Database File Format", 1.3.
constexpr std::size_t kHeaderSize = 100;
constexpr std::string_view kMagic("SQLite format 3\0", 16);
constexpr std::size_t kPageSizeAt = 16;
constexpr std::size_t kChangeCounterAt = 24;
constexpr std::size_t kPagesAt = 28;
constexpr std::size_t kUserVersionAt = 60;
constexpr std::size_t kApplicationIdAt = 68;
constexpr std::size_t kVersionValidForAt = 92;

class Header {
public:
    explicit Header(std::span<const unsigned char> bytes)
        : m_bytes(bytes) {}
    [[nodiscard]] bool isSqlite() const {
        return m_bytes.size() >= kMagic.size() && std::memcmp(m_bytes.data(), kMagic.data(), kMagic.size()) == 0;
    }
    [[nodiscard]] bool isWhole() const { return m_bytes.size() == kHeaderSize; }
    [[nodiscard]] std::uint32_t number(std::size_t at) const {
        return static_cast<std::uint32_t>(m_bytes[at]) << 24 | static_cast<std::uint32_t>(m_bytes[at + 1]) << 16 |
               static_cast<std::uint32_t>(m_bytes[at + 2]) << 8 | m_bytes[at + 3];
    }
    [[nodiscard]] std::uint64_t pageSize() const {
        const auto size = static_cast<std::uint64_t>(m_bytes[kPageSizeAt]) << 8 | m_bytes[kPageSizeAt + 1];
        return size == 1 ? 65536 : size;
    }
    /// How long the file is by its own word; 0 when it does not say.
    [[nodiscard]] std::uint64_t fileSize() const {
        return number(kChangeCounterAt) == number(kVersionValidForAt) ? number(kPagesAt) * pageSize() : 0;
    }

private:
    std::span<const unsigned char> m_bytes;
};

class Descriptor {
public:
    explicit Descriptor(const std::string& path)
        : m_fd(open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK)) {}
    ~Descriptor() {
        if (m_fd >= 0) {
            close(m_fd);
        }
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int get() const { return m_fd; }

private:
    int m_fd;
};

tl::unexpected<Refusal> refuseFile(Code code, const std::string& given, std::string reason) {
    return refuse(code, {{"ledger", given}, {"reason", std::move(reason)}});
}

bool mayWrite(const std::string& path) { return faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0; }

bool hasLog(const std::string& path) {
    std::error_code error;
    const auto size = fs::file_size(path + "-wal", error);
    return !error && size > 0;
}

/// How long an open file is now; 0 when nobody can say.
std::uint64_t sizeOf(const Descriptor& file) {
    struct stat facts {};
    return fstat(file.get(), &facts) == 0 ? static_cast<std::uint64_t>(facts.st_size) : 0;
}

Result<void> inspectContents(const std::string& given, const std::string& path, int known) {
    const Descriptor file(path);
    if (file.get() < 0) {
        return refuseFile(Code::LedgerNotWritable, given, "it may not even be read");
    }
    std::array<unsigned char, kHeaderSize> bytes{};
    const auto got = pread(file.get(), bytes.data(), bytes.size(), 0);
    if (got < 0) {
        return refuseFile(Code::LedgerUnreachable, given, std::strerror(errno));
    }
    if (got == 0) {
        return refuseFile(Code::LedgerForeign, given, "the file is empty");
    }
    const Header header(std::span<const unsigned char>(bytes).first(static_cast<std::size_t>(got)));
    if (!header.isSqlite()) {
        return refuseFile(Code::LedgerForeign, given, "the file is no SQLite database");
    }
    if (!header.isWhole()) {
        return refuseFile(Code::LedgerDamaged, given, "the file ends within its header");
    }
    if (header.number(kApplicationIdAt) != static_cast<std::uint32_t>(kApplicationId)) {
        return refuseFile(Code::LedgerForeign, given, "the file is a database of another program");
    }
    // The header may be behind the log, never ahead of it: what SQLite reads later can only be newer still.
    if (const auto found = header.number(kUserVersionAt); found > static_cast<std::uint32_t>(known)) {
        return refuse(Code::LedgerNewer,
                      {{"ledger", given}, {"found", std::int64_t{found}}, {"known", std::int64_t{known}}});
    }
    // With a log beside it the file may have been left in the middle of taking the log's pages over, the first of which
    // tells the new length. SQLite finishes that. The size comes last: it only grows, and where the log has gone since
    // the header was read, all of it is in the file.
    if (!hasLog(path) && sizeOf(file) < header.fileSize()) {
        return refuseFile(Code::LedgerDamaged, given, "the end of the file is missing");
    }
    return {};
}

Result<void> inspectPlace(const std::string& given, const fs::path& folder) {
    struct stat facts {};
    if (stat(folder.c_str(), &facts) != 0) {
        return refuseFile(Code::LedgerUnreachable, given,
                          errno == ENOENT ? "there is no such folder" : std::strerror(errno));
    }
    if (!S_ISDIR(facts.st_mode)) {
        return refuseFile(Code::LedgerUnreachable, given, "there is no such folder");
    }
    struct statfs system {};
    if (statfs(folder.c_str(), &system) == 0) {
        if (const auto name = networkFileSystem(static_cast<std::uint32_t>(system.f_type))) {
            return refuse(Code::LedgerOnNetwork, {{"ledger", given}, {"filesystem", *name}});
        }
    }
    return {};
}

} // namespace

std::optional<std::string> networkFileSystem(std::uint32_t type) {
    // Source: linux/magic.h and statfs(2). FUSE is left out: most of what it mounts is a local disk.
    static constexpr std::array<std::pair<std::uint32_t, std::string_view>, 12> kFromElsewhere = {{
        {0x00006969, "NFS"},
        {0x0000517b, "SMB"},
        {0xfe534d42, "SMB"},
        {0xff534d42, "CIFS"},
        {0x0000564c, "NCP"},
        {0x5346414f, "AFS"},
        {0x6b414653, "AFS"},
        {0x73757245, "Coda"},
        {0x00c36400, "Ceph"},
        {0x01161970, "GFS2"},
        {0x7461636f, "OCFS2"},
        {0x0bd00bd0, "Lustre"},
    }};
    for (const auto& [known, name] : kFromElsewhere) {
        if (known == type) {
            return std::string(name);
        }
    }
    return std::nullopt;
}

Result<LedgerFile> inspectLedgerFile(const std::string& given, int known) {
    std::error_code error;
    auto path = fs::weakly_canonical(fs::absolute(given, error), error);
    if (error || path.empty()) {
        return refuseFile(Code::LedgerUnreachable, given, error ? error.message() : "there is no such folder");
    }
    struct stat facts {};
    const bool exists = stat(path.c_str(), &facts) == 0;
    if (!exists && errno != ENOENT && errno != ENOTDIR) {
        return refuseFile(Code::LedgerUnreachable, given, std::strerror(errno));
    }
    if (exists && S_ISDIR(facts.st_mode)) {
        return refuseFile(Code::LedgerUnreachable, given, "it is a folder");
    }
    if (exists && !S_ISREG(facts.st_mode)) {
        return refuseFile(Code::LedgerForeign, given, "it is not a file");
    }
    if (path.filename().empty()) {
        return refuseFile(Code::LedgerUnreachable, given, "there is no such folder");
    }
    const auto folder = path.parent_path();
    if (auto place = inspectPlace(given, folder); !place) {
        return tl::unexpected(place.error());
    }
    if (exists && facts.st_nlink > 1 && facts.st_nlink > 1 + newNamesOf(path.string())) {
        return refuseFile(Code::LedgerUnreachable, given,
                          "the file has a second name (a hard link), and SQLite would keep a log for each; remove one "
                          "of the names, or copy the file instead");
    }
    if (exists) {
        Result<void> contents; // of one that is open here somebody looked at them before opening it
        (void)OpenFile::unlessOpen(facts.st_dev, facts.st_ino, [&] { contents = inspectContents(given, path, known); });
        if (!contents) {
            return tl::unexpected(contents.error());
        }
        if (!mayWrite(path)) {
            return refuseFile(Code::LedgerNotWritable, given, "the file is read-only");
        }
    } else if (fs::is_symlink(fs::symlink_status(path, error))) {
        return refuseFile(Code::LedgerUnreachable, given, "it is a link to nothing");
    }
    if (!mayWrite(folder)) {
        return refuseFile(Code::LedgerNotWritable, given, "its folder is read-only");
    }
    return LedgerFile{path.string(), exists};
}

} // namespace rw::sql
