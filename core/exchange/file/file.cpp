#include "core/exchange/file/file.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <system_error>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace warmbench::exchange {
namespace {

namespace fs = std::filesystem;

/// An open file that is closed with its owner.
class Descriptor {
public:
    explicit Descriptor(int number) : m_number(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() {
        if (m_number >= 0) ::close(m_number);
    }
    [[nodiscard]] bool isOpen() const { return m_number >= 0; }
    [[nodiscard]] int number() const { return m_number; }
    /// Closes now, to learn of an error that only closing shows.
    bool close() {
        const int number = m_number;
        m_number = -1;
        return ::close(number) == 0;
    }

private:
    int m_number;
};

/// A file beside another that is removed again unless it took its name.
class FileBeside {
public:
    explicit FileBeside(const fs::path& path)
        : m_name((path.parent_path() / ("." + path.filename().string() + ".XXXXXX")).string()),
          m_file(::mkstemp(m_name.data())) {}
    FileBeside(const FileBeside&) = delete;
    FileBeside& operator=(const FileBeside&) = delete;
    ~FileBeside() {
        if (m_made && !m_renamed) ::unlink(m_name.c_str());
    }
    [[nodiscard]] Descriptor& file() { return m_file; }
    bool takeName(const fs::path& path) {
        m_renamed = ::rename(m_name.c_str(), path.c_str()) == 0;
        return m_renamed;
    }

private:
    std::string m_name;
    Descriptor m_file;
    bool m_made = m_file.isOpen();
    bool m_renamed = false;
};

Refusal systemRefusal(const fs::path& path, const char* what) {
    return {path.string(), phrase(what, std::strerror(errno))};
}

bool writeAll(int file, std::string_view content) {
    while (!content.empty()) {
        const ssize_t written = ::write(file, content.data(), content.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return false;
        content.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

/// The permissions that the new file must have: those of the old one, or what the user's mask leaves.
mode_t permissionsFor(const fs::path& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) == 0) return status.st_mode & 07777;
    const mode_t mask = ::umask(0);
    ::umask(mask);
    return 0666 & ~mask;
}

/// Makes the new name itself last: the folder is flushed too. Not all file systems can; the content is safe
/// either way.
void flushFolder(const fs::path& folder) {
    const Descriptor opened{
        ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)};
    if (opened.isOpen()) ::fsync(opened.number());
}

} // namespace

Result<std::string> readFile(const fs::path& path, std::size_t most) {
    const Descriptor file{::open(path.c_str(), O_RDONLY | O_CLOEXEC)};
    if (!file.isOpen())
        return systemRefusal(path, pattern("cannot be opened: %1, expected a file that can be read"));
    std::string content;
    struct stat status {};
    if (::fstat(file.number(), &status) == 0)
        content.reserve(std::min(most, static_cast<std::size_t>(status.st_size)));
    std::array<char, 1 << 16> block;
    while (content.size() < most) {
        const ssize_t count =
            ::read(file.number(), block.data(), std::min(block.size(), most - content.size()));
        if (count < 0 && errno == EINTR) continue;
        if (count < 0)
            return systemRefusal(path, pattern("cannot be read: %1, expected a file that can be read"));
        if (count == 0) break;
        content.append(block.data(), static_cast<std::size_t>(count));
    }
    return content;
}

Outcome replaceFile(const fs::path& path, std::string_view content) {
    std::error_code ignored;
    if (fs::exists(path, ignored) && !fs::is_regular_file(path, ignored)) {
        Descriptor device{::open(path.c_str(), O_WRONLY | O_CLOEXEC)};
        if (!device.isOpen() || !writeAll(device.number(), content) || !device.close())
            return systemRefusal(path, pattern("cannot be written: %1, expected room for a file there"));
        return std::nullopt;
    }
    // A link stays a link: what it points to is replaced.
    const fs::path target = fs::is_symlink(path, ignored) ? fs::weakly_canonical(path, ignored) : path;
    FileBeside beside{target};
    Descriptor& file = beside.file();
    if (!file.isOpen() || ::fchmod(file.number(), permissionsFor(target)) != 0 ||
        !writeAll(file.number(), content) || ::fsync(file.number()) != 0 || !file.close() ||
        !beside.takeName(target))
        return systemRefusal(path, pattern("cannot be written: %1, expected room for a file there"));
    flushFolder(target.parent_path());
    return std::nullopt;
}

} // namespace warmbench::exchange
