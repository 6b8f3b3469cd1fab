#include "tests/faults/crash/scenario.h"

#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <stdexcept>

using namespace warmbench::tests;

namespace {

namespace fs = std::filesystem;

/// Careless work, and the kind of fault that it does not outlive.
struct Careless {
    const char* what;
    const char* fault;
    Scenario scenario;
    Scenario careful; ///< the product's own work of the same kind
};

const Scenario& called(const std::vector<Scenario>& all, const std::string& name) {
    for (const Scenario& scenario : all)
        if (scenario.name == name) return scenario;
    throw std::invalid_argument("there is no scenario of the name " + name);
}

/// The same work and the same verdict, done by another program.
Scenario doneBy(Scenario scenario, std::function<std::vector<std::string>(const std::string&)> call) {
    scenario.call = std::move(call);
    return scenario;
}

std::vector<Careless> carelessWork(const std::string& prototypes) {
    const std::vector<Scenario> all = scenarios(prototypes);
    const auto commands = [&](const char* how, const char* what, const char* fault) {
        return Careless{
            what, fault,
            doneBy(called(all, "commands"),
                   [how](const std::string& folder) {
                       return std::vector<std::string>{FAULTS_CARELESS, how, folder + "/book", "10", "12"};
                   }),
            called(all, "commands")};
    };
    const auto file = [&](const char* how, const char* what, const char* fault) {
        return Careless{what, fault,
                        doneBy(called(all, "export over"),
                               [=](const std::string& folder) {
                                   return std::vector<std::string>{FAULTS_CARELESS, how,
                                                                   prototypes + "/large.json",
                                                                   folder + "/made.json"};
                               }),
                        called(all, "export over")};
    };
    return {commands("unsynced", "commands with synchronous = OFF", "power"),
            commands("early", "commands said to be kept before they are", "kill"),
            commands("early", "commands said to be kept before they are", "torn"),
            commands("deaf", "commands said to be kept that were refused", "full"),
            commands("deaf", "commands said to be kept that were refused", "error"),
            file("in-place", "a file written over the old one", "kill"),
            file("in-place", "a file written over the old one", "torn"),
            file("in-place", "a file written over the old one", "full"),
            commands("unsynced", "commands with synchronous = OFF", "after"),
            file("in-place", "a file written over the old one", "after"),
            file("renamed", "a new file that takes the name unsynced", "after")};
}

struct Seen {
    int runs = 0;
    int wrong = 0;
    std::string first; ///< what was said of the first
};

/// Strikes at calls spread over the whole run, `most` of them at most.
Seen strikeAll(const Scenario& scenario, const std::string& fault, const std::string& folder, long most) {
    const std::string count = folder + "-count";
    fs::create_directories(count);
    scenario.prepare(count);
    const long calls = callsOf(count, scenario.call(count));
    fs::remove_all(count);
    Seen seen;
    int acknowledged = 0;
    const long step = std::max(1L, calls / most);
    for (long at = 1; at <= calls; at += step) {
        const std::string wrong = struck(scenario, {fault, at, folder}, acknowledged).wrong;
        ++seen.runs;
        if (wrong.empty()) continue;
        if (seen.wrong++ == 0) seen.first = wrong;
    }
    return seen;
}

} // namespace

/// faults_sight [CALLS]: whether faults_crashes would find a loss. Work that is careless on purpose is struck
/// at so many calls of each kind of fault. Exit status 1 where nothing is found wrong with it, or anything
/// with the product's own work at the same calls: then a clean run of faults_crashes would say nothing.
int main(int argc, char** argv) {
    const long most = argc > 1 ? std::max(3L, std::atol(argv[1])) : 100;
    const QTemporaryDir place;
    const std::string top = place.path().toStdString();
    fs::create_directories(top + "/prototypes");
    int blind = 0;
    for (const Careless& one : carelessWork(top + "/prototypes")) {
        const Seen seen = strikeAll(one.scenario, one.fault, top + "/run", most);
        const Seen careful = strikeAll(one.careful, one.fault, top + "/run", most);
        std::printf("%-44s %-6s %3d runs, %3d found wrong (%s); done as it should be: %3d runs, %d wrong\n",
                    one.what, one.fault, seen.runs, seen.wrong, seen.first.c_str(), careful.runs,
                    careful.wrong);
        blind += seen.wrong == 0 || careful.wrong > 0 || careful.runs == 0 ? 1 : 0;
    }
    std::printf("%s\n", blind == 0 ? "every careless work was found out" : "a loss would not be found");
    return blind == 0 ? 0 : 1;
}
