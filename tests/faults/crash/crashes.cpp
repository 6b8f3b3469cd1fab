#include "tests/app/storage/book_folder.h"
#include "tests/faults/crash/scenario.h"
#include "tests/support/small_book.h"

#include <QTemporaryDir>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <random>

#include <sys/mount.h>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

namespace fs = std::filesystem;

constexpr std::array<const char*, 6> kinds{"kill", "torn", "power", "after", "full", "error"};

struct Counts {
    int runs = 0;
    int struck = 0; ///< died, or said that it failed
    int wrong = 0;
};

/// One run under one fault; says what is wrong after it, on standard output.
bool strike(const Scenario& scenario, const Fault& fault, Counts& counts, int& acknowledged) {
    const auto [ended, wrong] = struck(scenario, fault, acknowledged);
    ++counts.runs;
    counts.struck += ended.killed || ended.status != 0 ? 1 : 0;
    if (wrong.empty()) return true;
    ++counts.wrong;
    std::printf("%s, %s at call %ld: %s\n", scenario.name, fault.kind.c_str(), fault.at, wrong.c_str());
    return false;
}

/// Commands on a real device that is full: a small file system in memory. Says where none can be mounted.
bool fillDevice(const Scenario& commands, const std::string& folder, int& acknowledged) {
    fs::create_directories(folder);
    if (::mount("tmpfs", folder.c_str(), "tmpfs", 0, "size=700k") != 0) {
        std::printf(
            "a small file system of its own can't be mounted here, so a full device was only played\n");
        return true;
    }
    const std::string inside = folder + "/f";
    fs::create_directories(inside);
    commands.prepare(inside);
    std::vector<std::string> call = commands.call(inside);
    call.back() = "100000";
    // The fault's own files would not fit beside it.
    const Ended ended = runUnder({"none", 0, folder}, call);
    std::string wrong = ended.error.empty() ? "it did not become full, or nothing was said" : std::string();
    const int before = acknowledged;
    if (wrong.empty()) {
        // Room is made, as its owner would.
        ::mount("tmpfs", folder.c_str(), "tmpfs", MS_REMOUNT, "size=8m");
        wrong = commands.judge(inside, ended, acknowledged);
    }
    ::umount(folder.c_str());
    std::printf("a full device: %d commands kept until it was full, then: %s", acknowledged - before,
                ended.error.c_str());
    if (!wrong.empty()) std::printf("%s\n", wrong.c_str());
    return wrong.empty();
}

} // namespace

/// faults_crashes [TIMES]: strikes every kind of writing with every kind of fault at calls drawn at random,
/// so many times in all, and looks at what is left each time. Exit status 1 where anything acknowledged is
/// missing, anything is half written, or any book does not open sound.
int main(int argc, char** argv) {
    const int times = argc > 1 ? std::atoi(argv[1]) : 600;
    const QTemporaryDir place;
    const std::string top = place.path().toStdString();
    fs::create_directories(top + "/prototypes");
    const std::vector<Scenario> all = scenarios(top + "/prototypes");
    std::vector<long> calls;
    for (const Scenario& scenario : all) {
        const std::string folder = top + "/count";
        fs::create_directories(folder);
        scenario.prepare(folder);
        calls.push_back(callsOf(folder, scenario.call(folder)));
        std::printf("%-12s %4ld calls that a fault can meet\n", scenario.name, calls.back());
        fs::remove_all(folder);
        if (calls.back() < 3) return 2; // the shim does not work here: nothing would be tested
    }
    std::mt19937_64 random(20'261'127);
    std::map<std::pair<std::string, std::string>, Counts> counts;
    int acknowledged = 0;
    for (int i = 0; i < times; ++i) {
        const std::size_t which = static_cast<std::size_t>(i) % all.size();
        const char* kind = kinds[static_cast<std::size_t>(i) / all.size() % kinds.size()];
        const long at = std::uniform_int_distribution<long>(1, calls[which])(random);
        strike(all[which], {kind, at, top + "/run"}, counts[{all[which].name, kind}], acknowledged);
    }
    int runs = 0;
    int struck = 0;
    int wrong = fillDevice(all.front(), top + "/device", acknowledged) ? 0 : 1;
    for (const auto& [what, count] : counts) {
        std::printf("%-12s %-6s %4d runs, %4d struck, %d wrong\n", what.first.c_str(), what.second.c_str(),
                    count.runs, count.struck, count.wrong);
        runs += count.runs;
        struck += count.struck;
        wrong += count.wrong;
    }
    std::printf("%d faults, %d of them ended or refused the work; %d commands said to be kept, all there; %d "
                "wrong\n",
                runs, struck, acknowledged, wrong);
    return wrong == 0 ? 0 : 1;
}
