#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/faults/load/client.h"
#include "tests/support/small_book.h"

#include <nlohmann/json.hpp>

#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <set>

#include <sys/wait.h>
#include <unistd.h>

using namespace warmbench;
using namespace warmbench::tests;
using nlohmann::json;

namespace {

int sayDone = -1;
int hearGo = -1;

/// Tells the first process that this client is done, and waits for the others: it hears of the end of a pipe.
void waitForOthers() {
    char byte = 'd';
    if (::write(sayDone, &byte, 1) != 1) ::_exit(3);
    while (::read(hearGo, &byte, 1) > 0) {
    }
}

void write(const std::string& file, const ClientRun& run) {
    std::ofstream(file) << json{{"kept", run.kept},         {"faster", run.faster},
                                {"refused", run.refused},   {"failed", run.failed},
                                {"checks", run.checks},     {"microseconds", run.microseconds},
                                {"lastBook", run.lastBook}, {"trouble", run.trouble}};
}

ClientRun read(const std::string& file) {
    std::ifstream in(file);
    const json told = json::parse(in);
    return {told["kept"],   told["faster"],       told["refused"],  told["failed"],
            told["checks"], told["microseconds"], told["lastBook"], told["trouble"]};
}

/// Slots that two containers hold on the same day; found without the program's own rules.
int slotsHeldTwice(const HouseBook& book) {
    std::set<std::tuple<std::int64_t, int, int, std::string>> held;
    int twice = 0;
    for (const auto& [id, stay] : book.all<Stay>())
        for (Day at = stay.from; at < stay.to; at = at + 1)
            for (const Place& place : stay.places)
                for (int row = place.slots.row; row < place.slots.row + place.slots.height; ++row)
                    for (int col = place.slots.col; col < place.slots.col + place.slots.width; ++col)
                        if (!held.emplace(stay.zone.number, row, col, at.iso()).second) ++twice;
    return twice;
}

double milliseconds(const std::vector<std::int64_t>& sorted, double share) {
    const auto place = static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1));
    return static_cast<double>(sorted[place]) / 1000;
}

} // namespace

/// faults_load CLIENTS COMMANDS: so many processes at once do so many commands each on one shared book, in
/// each other's way on purpose. Prints what came of it; exit status 1 where anything was lost, held twice, or
/// seen differently.
int main(int argc, char** argv) {
    const int clients = argc > 1 ? std::atoi(argv[1]) : 20;
    const int commands = argc > 2 ? std::atoi(argv[2]) : 200;
    if (clients < 1 || clients > 50 || commands < 1) {
        std::fprintf(stderr, "faults_load CLIENTS (1 to 50) COMMANDS\n");
        return 2;
    }
    PostgresServer::Options options;
    options.syncs = true;
    PostgresServer server(options);
    const std::string address = server.newDatabase();
    if (const auto refusal = app::BookFile::create(address, smallBook().book)) {
        std::fprintf(stderr, "%s\n", refusal->text().c_str());
        return 3;
    }
    const QTemporaryDir folder;
    const auto file = [&](int client) { return folder.filePath(QString::number(client)).toStdString(); };
    int done[2];
    int go[2];
    if (::pipe(done) != 0 || ::pipe(go) != 0) return 3;
    const auto begin = std::chrono::steady_clock::now();
    std::vector<pid_t> processes;
    for (int client = 0; client < clients; ++client) {
        processes.push_back(::fork());
        if (processes.back() != 0) continue;
        ::close(go[1]);
        sayDone = done[1];
        hearGo = go[0];
        write(file(client), runClient(address, client, commands, waitForOthers));
        ::_exit(0);
    }
    ::close(done[1]);
    char byte = 0;
    for (int i = 0; i < clients && ::read(done[0], &byte, 1) == 1; ++i) {
    }
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    ::close(go[1]);
    int crashed = 0;
    for (const pid_t process : processes) {
        int status = 0;
        ::waitpid(process, &status, 0);
        crashed += status == 0 ? 0 : 1;
    }
    if (crashed > 0) {
        std::printf("%d of %d clients ended before their time\n", crashed, clients);
        return 1;
    }
    const auto book = opened(address, app::OpenMode::Read);
    std::set<std::string> checks;
    for (const auto& [id, check] : book->book().all<RootCheck>()) checks.insert(check.note);
    ClientRun all;
    int lost = 0;
    int different = 0;
    std::size_t keptChecks = 0;
    for (int client = 0; client < clients; ++client) {
        const ClientRun run = read(file(client));
        all.kept += run.kept;
        all.faster += run.faster;
        all.refused += run.refused;
        all.failed += run.failed;
        if (!run.trouble.empty()) all.trouble = run.trouble;
        for (const std::string& note : run.checks) lost += checks.contains(note) ? 0 : 1;
        keptChecks += run.checks.size();
        all.microseconds.insert(all.microseconds.end(), run.microseconds.begin(), run.microseconds.end());
        different += run.lastBook == hashOf(book->book()) ? 0 : 1;
    }
    std::sort(all.microseconds.begin(), all.microseconds.end());
    const int twice = slotsHeldTwice(book->book());
    const auto wrong = book->check();
    const std::size_t entries = book->journal()->size();
    const bool whole = entries == static_cast<std::size_t>(all.kept) + 1 && checks.size() == keptChecks;
    std::printf("%d clients, %zu commands in %.1f s: %.0f a second\n", clients, all.microseconds.size(),
                seconds, static_cast<double>(all.microseconds.size()) / seconds);
    std::printf("delay: median %.1f ms, 99th percentile %.1f ms, longest %.1f ms\n",
                milliseconds(all.microseconds, 0.5), milliseconds(all.microseconds, 0.99),
                milliseconds(all.microseconds, 1));
    std::printf("kept %d, somebody was faster %d, against a rule %d, failed %d%s\n", all.kept, all.faster,
                all.refused, all.failed, (all.trouble.empty() ? "" : ": " + all.trouble).c_str());
    std::printf(
        "checks kept %zu, lost %d; slots held twice %d; books that differ %d; journal entries %zu; found "
        "wrong %zu\n",
        keptChecks, lost, twice, different, entries, wrong.size());
    for (const Refusal& one : wrong) std::printf("%s\n", one.text().c_str());
    return lost + twice + different + all.failed == 0 && wrong.empty() && whole ? 0 : 1;
}
