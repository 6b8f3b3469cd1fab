// Preloaded into a program, it makes the system's calls fail as a bad day does. It counts the calls that
// change files under the folder FAULT_FOLDER, and at the FAULT_AT-th does what FAULT_KIND says:
//   count  nothing; the number of calls is added to the file FAULT_COUNT when the program ends
//   kill   SIGKILL before the call
//   torn   half of the bytes are written, then SIGKILL
//   power  what has not been synced is taken back, all or at random, then SIGKILL
//   after  the same when the program has ended by itself, whatever the number
//   full   the device is full from here on
//   error  this one call fails with an input/output error
#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <map>
#include <mutex>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include <dlfcn.h>
#include <fcntl.h>
#include <limits.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <unistd.h>

namespace {

template <class Function>
Function real(const char* name) {
    return reinterpret_cast<Function>(::dlsym(RTLD_NEXT, name));
}

using WriteCall = ssize_t (*)(int, const void*, size_t);
using PwriteCall = ssize_t (*)(int, const void*, size_t, off_t);
using SyncCall = int (*)(int);
using TruncateCall = int (*)(int, off_t);
using LinkCall = int (*)(const char*, const char*);
using UnlinkCall = int (*)(const char*);

/// One change of a file that is not on the disk yet, and how to take it back.
struct Unsynced {
    off_t offset = 0;
    std::vector<char> before;
    off_t sizeBefore = 0;
};
using File = std::pair<dev_t, ino_t>;
struct Held {
    int descriptor = -1; ///< never closed: closing would give up the program's locks
    std::vector<Unsynced> changes;
};

/// A change of names that is not on the disk yet, and how to take it back.
struct Renamed {
    std::string from; ///< empty for one that was only taken away
    std::string to;   ///< the name that was made; empty for one that was only taken away
    std::string kept; ///< another link to what had the name before; empty where nothing had
    std::string name; ///< the name that it had
};

struct State;
void takeBack(State& s);

struct State {
    std::string kind = text("FAULT_KIND");
    std::string folder = text("FAULT_FOLDER");
    long at = std::atol(text("FAULT_AT").c_str());
    std::atomic<long> calls{0};
    std::mutex mutex;
    std::map<File, Held> unsynced;
    std::vector<Renamed> renamed; ///< in the order in which it was done
    int links = 0;

    static std::string text(const char* name) {
        const char* value = std::getenv(name);
        return value ? value : "";
    }
    [[nodiscard]] bool losesPower() const { return kind == "power" || kind == "after"; }

    ~State() {
        if (kind == "after") takeBack(*this);
        if (kind != "count") return;
        const int file = ::open(text("FAULT_COUNT").c_str(), O_WRONLY | O_CREAT | O_APPEND, 0600);
        const std::string said = std::to_string(calls.load()) + "\n";
        [[maybe_unused]] const ssize_t done = real<WriteCall>("write")(file, said.data(), said.size());
    }
};

State& state() {
    static State state;
    return state;
}

bool isOurs(const std::string& path) {
    const State& s = state();
    return !s.kind.empty() && (path + '/').compare(0, s.folder.size(), s.folder) == 0;
}

std::string pathOf(int descriptor) {
    char path[PATH_MAX];
    const std::string link = "/proc/self/fd/" + std::to_string(descriptor);
    const ssize_t length = ::readlink(link.c_str(), path, sizeof path);
    return length < 0 ? std::string() : std::string(path, static_cast<size_t>(length));
}

/// Shared memory of readers and writers lives as long as they do.
bool counts(int descriptor) {
    const std::string path = pathOf(descriptor);
    return isOurs(path) && !path.ends_with("-shm");
}

[[noreturn]] void die() {
    ::kill(::getpid(), SIGKILL);
    for (;;) ::pause();
}

/// Takes back what is not on the disk. Of the bytes all, or a random part, as disks write in an order of
/// their own; of the names the latest, as file systems keep these in order.
void takeBack(State& s) {
    std::mt19937_64 random(static_cast<unsigned long>(s.at));
    const bool all = random() % 2 == 0;
    for (auto& [file, held] : s.unsynced)
        for (auto change = held.changes.rbegin(); change != held.changes.rend(); ++change) {
            if (!all && random() % 2 == 0) continue;
            real<PwriteCall>("pwrite")(held.descriptor, change->before.data(), change->before.size(),
                                       change->offset);
            if (all) real<TruncateCall>("ftruncate")(held.descriptor, change->sizeBefore);
        }
    const size_t last = all ? 0 : random() % (s.renamed.size() + 1);
    for (size_t i = s.renamed.size(); i-- > last;) {
        const Renamed& one = s.renamed[i];
        if (!one.from.empty())
            real<LinkCall>("rename")(one.to.c_str(), one.from.c_str());
        else if (!one.to.empty())
            real<UnlinkCall>("unlink")(one.to.c_str());
        if (!one.kept.empty()) real<LinkCall>("rename")(one.kept.c_str(), one.name.c_str());
    }
}

[[noreturn]] void losePower() {
    takeBack(state());
    die();
}

/// Remembers a change of names before it is done: `from` becomes `to`, or `to` is made, or `gone` is taken
/// away.
Renamed before(const char* from, const char* to, const char* gone) {
    State& s = state();
    const std::string name = to ? to : gone;
    Renamed one{from ? from : "", to ? to : "", {}, name};
    struct stat status {};
    if (::stat(name.c_str(), &status) != 0) return one;
    one.kept = name + ".shim-" + std::to_string(++s.links);
    if (real<LinkCall>("link")(name.c_str(), one.kept.c_str()) != 0) one.kept.clear();
    return one;
}

/// Does a change of names, and keeps how to take it back.
template <class Act>
int changingNames(const char* from, const char* to, const char* gone, const Act& act) {
    State& s = state();
    if (!s.losesPower()) return act();
    const std::lock_guard lock(s.mutex);
    Renamed one = before(from, to, gone);
    const int done = act();
    if (done == 0)
        s.renamed.push_back(std::move(one));
    else if (!one.kept.empty())
        real<UnlinkCall>("unlink")(one.kept.c_str());
    return done;
}

/// A folder that is synced has all of its names on the disk.
void syncNames(const std::string& folder) {
    std::erase_if(state().renamed, [&](const Renamed& one) {
        if (one.name.substr(0, one.name.rfind('/')) != folder) return false;
        if (!one.kept.empty()) real<UnlinkCall>("unlink")(one.kept.c_str());
        return true;
    });
}

/// Whether this call is the one, or one after it.
enum class Moment { Before, Now, After };

Moment count() {
    State& s = state();
    const long call = ++s.calls;
    if (s.kind == "after" || s.at <= 0 || call < s.at) return Moment::Before;
    return call == s.at ? Moment::Now : Moment::After;
}

/// What happens to a call: 0 where it goes on, else the error that it ends with.
int meets(Moment moment) {
    State& s = state();
    if (moment == Moment::Now && s.kind == "kill") die();
    if (moment == Moment::Now && s.kind == "power") losePower();
    if (moment != Moment::Before && s.kind == "full") return ENOSPC;
    if (moment == Moment::Now && s.kind == "error") return EIO;
    return 0;
}

void remember(int descriptor, off_t offset, size_t length) {
    State& s = state();
    if (!s.losesPower()) return;
    struct stat status {};
    if (::fstat(descriptor, &status) != 0) return;
    const std::lock_guard lock(s.mutex);
    Held& held = s.unsynced[{status.st_dev, status.st_ino}];
    if (held.descriptor < 0) held.descriptor = ::open(pathOf(descriptor).c_str(), O_RDWR);
    Unsynced change{offset, std::vector<char>(length), status.st_size};
    const ssize_t found = ::pread(held.descriptor, change.before.data(), length, offset);
    change.before.resize(found > 0 ? static_cast<size_t>(found) : 0);
    held.changes.push_back(std::move(change));
}

ssize_t written(int descriptor, const void* bytes, size_t length, off_t offset, bool atOffset) {
    const auto write = real<WriteCall>("write");
    const auto pwrite = real<PwriteCall>("pwrite");
    const auto put = [&](size_t count) {
        return atOffset ? pwrite(descriptor, bytes, count, offset) : write(descriptor, bytes, count);
    };
    if (!counts(descriptor)) return put(length);
    const Moment moment = count();
    if (moment == Moment::Now && state().kind == "torn") {
        put(length / 2);
        die();
    }
    if (const int failed = meets(moment)) {
        errno = failed;
        return -1;
    }
    remember(descriptor, atOffset ? offset : ::lseek(descriptor, 0, SEEK_CUR), length);
    return put(length);
}

int synced(const char* name, int descriptor) {
    const auto sync = real<SyncCall>(name);
    if (!counts(descriptor)) return sync(descriptor);
    const Moment moment = count();
    if (moment == Moment::Now && state().kind == "torn") die();
    if (const int failed = meets(moment)) {
        errno = failed;
        return -1;
    }
    struct stat status {};
    ::fstat(descriptor, &status);
    const std::lock_guard lock(state().mutex);
    if (S_ISDIR(status.st_mode))
        syncNames(pathOf(descriptor));
    else
        state().unsynced[{status.st_dev, status.st_ino}].changes.clear();
    return 0;
}

/// A call on names rather than on an open file.
template <class Act>
int named(const char* path, const Act& act) {
    if (!isOurs(path)) return act();
    const Moment moment = count();
    if (moment == Moment::Now && state().kind == "torn") die();
    // Names can be taken away on a full disk.
    if (const int failed = state().kind == "full" ? 0 : meets(moment)) {
        errno = failed;
        return -1;
    }
    return act();
}

} // namespace

extern "C" {

ssize_t write(int descriptor, const void* bytes, size_t length) {
    return written(descriptor, bytes, length, 0, false);
}
ssize_t pwrite(int descriptor, const void* bytes, size_t length, off_t offset) {
    return written(descriptor, bytes, length, offset, true);
}
ssize_t pwrite64(int descriptor, const void* bytes, size_t length, off_t offset) {
    return written(descriptor, bytes, length, offset, true);
}
ssize_t writev(int descriptor, const iovec* parts, int number) {
    ssize_t all = 0;
    for (int i = 0; i < number; ++i) {
        const ssize_t done = written(descriptor, parts[i].iov_base, parts[i].iov_len, 0, false);
        if (done < 0) return all > 0 ? all : done;
        all += done;
        if (static_cast<size_t>(done) < parts[i].iov_len) break;
    }
    return all;
}
int fsync(int descriptor) {
    return synced("fsync", descriptor);
}
int fdatasync(int descriptor) {
    return synced("fdatasync", descriptor);
}
int ftruncate(int descriptor, off_t size) {
    const auto truncate = real<TruncateCall>("ftruncate");
    if (!counts(descriptor)) return truncate(descriptor, size);
    const Moment moment = count();
    if (moment == Moment::Now && state().kind == "torn") die();
    if (const int failed = state().kind == "full" ? 0 : meets(moment)) {
        errno = failed;
        return -1;
    }
    struct stat status {};
    ::fstat(descriptor, &status);
    if (size < status.st_size) remember(descriptor, size, static_cast<size_t>(status.st_size - size));
    return truncate(descriptor, size);
}
int ftruncate64(int descriptor, off_t size) {
    return ftruncate(descriptor, size);
}
int link(const char* from, const char* to) noexcept {
    return named(to, [&] {
        return changingNames(nullptr, to, nullptr, [&] { return real<LinkCall>("link")(from, to); });
    });
}
int rename(const char* from, const char* to) noexcept {
    return named(to, [&] {
        return changingNames(from, to, nullptr, [&] { return real<LinkCall>("rename")(from, to); });
    });
}
int unlink(const char* path) noexcept {
    return named(path, [&] {
        return changingNames(nullptr, nullptr, path, [&] { return real<UnlinkCall>("unlink")(path); });
    });
}
}
