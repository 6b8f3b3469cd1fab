#include "core/planner/planner.h"
#include "core/planner/format/answer_format.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/verify/verify.h"
#include "integer_program.h"

#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <regex>
#include <sstream>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

/// The planner beside CBC on every problem of a folder that has an `optimum.csv`, and of its folder `orlib`:
/// speed_planner FOLDER [SECONDS [CBC-SECONDS [PART-OF-NAME]]]. Prints a table in Markdown.
namespace warmbench::speed {
namespace {

namespace fs = std::filesystem;

struct Known {
    std::string file;
    std::optional<double> optimum;
    std::optional<double> best;     ///< found by others, where no optimum is proven
    std::optional<double> baseline; ///< of a simple greedy plan
};

std::vector<std::string> cells(const std::string& line) {
    std::istringstream text(line);
    std::vector<std::string> result;
    for (std::string cell; std::getline(text, cell, ',');) result.push_back(cell);
    return result;
}

std::vector<Known> knownOf(const fs::path& folder) {
    std::ifstream table(folder / "optimum.csv");
    std::string line;
    std::getline(table, line);
    const auto head = cells(line);
    std::vector<Known> all;
    while (std::getline(table, line)) {
        const auto row = cells(line);
        const auto number = [&](const char* name) -> std::optional<double> {
            const auto column =
                static_cast<std::size_t>(std::find(head.begin(), head.end(), name) - head.begin());
            if (column >= std::min(head.size(), row.size()) || row[column].empty()) return std::nullopt;
            return std::stod(row[column]);
        };
        all.push_back({row[0], number("optimum"), number("best_known"), number("baseline")});
    }
    return all;
}

/// Plans as they were found, and the bound at some times.
struct Watched {
    static constexpr double times[] = {1, 10, 60};

    std::vector<std::pair<double, double>> plans; ///< second, currency units
    std::map<double, double> bounds;              ///< currency units, by time
    double bound = 0;
    double last = 0; ///< second

    void operator()(const planner::Progress& progress) {
        for (const double time : times)
            if (progress.seconds > time && !bounds.contains(time)) bounds[time] = bound;
        bound = static_cast<double>(progress.bound) / 1000;
        last = progress.seconds;
        const double best = static_cast<double>(progress.best) / 1000;
        if (plans.empty() || best < plans.back().second) plans.emplace_back(progress.seconds, best);
    }

    /// When the plan was as good as that.
    [[nodiscard]] std::optional<double> reached(double total) const {
        for (const auto& [second, best] : plans)
            if (best <= total + 1e-9) return second;
        return std::nullopt;
    }
};

std::string number(const std::optional<double>& value, int decimals) {
    if (!value) return "-";
    char text[40];
    std::snprintf(text, sizeof text, "%.*f", decimals, *value);
    return text;
}

/// What came of CBC: a run that it ended itself, or how long it was waited for in vain, with the best total
/// that it had told of by then; none of them where it was not begun or refused the problem as too large.
struct Cbc {
    std::optional<CbcRun> run;
    std::optional<double> vain; ///< seconds
    std::optional<double> told; ///< currency units

    [[nodiscard]] std::string plan() const {
        if (vain) return (told ? number(told, 3) : "none") + " in " + number(vain, 0) + " s, ended";
        return run ? number(run->total, 3) : "-";
    }
    [[nodiscard]] std::optional<double> seconds() const { return run ? std::optional(run->seconds) : vain; }
    [[nodiscard]] std::optional<double> total() const { return run ? run->total : told; }
    [[nodiscard]] std::string proven() const {
        if (!run) return vain ? "no" : "-";
        return run->proven ? "yes" : "no";
    }
};

/// The best of the solutions that CBC tells of in what it prints.
std::optional<double> bestTold(const fs::path& printed) {
    static const std::regex solution("olution (?:found )?of ([-+0-9.e]+)");
    std::ifstream lines(printed);
    std::optional<double> best;
    std::smatch match;
    for (std::string line; std::getline(lines, line);)
        if (std::regex_search(line, match, solution)) {
            const double total = std::stod(match[1]);
            best = std::min(best.value_or(total), total);
        }
    return best;
}

/// Sends what this process prints into a file, line by line.
void printInto(const fs::path& file) {
    if (std::freopen(file.c_str(), "w", stdout) == nullptr) _exit(1);
    std::setvbuf(stdout, nullptr, _IOLBF, BUFSIZ);
}

/// CBC in a process of its own, which is ended where it overlooks its time: its first linear program can take
/// far longer.
Cbc cbcInTime(const planner::Problem& problem, double seconds) {
    static_assert(std::is_trivially_copyable_v<CbcRun>);
    int ends[2];
    if (seconds <= 0 || pipe(ends) != 0) return {};
    std::fflush(stdout); // what is not written yet would be written twice
    const fs::path printed = fs::temp_directory_path() / ("speed_planner_" + std::to_string(getpid()));
    const pid_t child = fork();
    if (child < 0) return {};
    if (child == 0) {
        printInto(printed);
        const auto solved = solveByCbc(problem, seconds);
        _exit(solved && write(ends[1], &*solved, sizeof *solved) == sizeof *solved ? 0 : 1);
    }
    close(ends[1]);
    pollfd answer{ends[0], POLLIN, 0};
    const int most = static_cast<int>(1000 * (2 * seconds + 30));
    CbcRun run;
    const bool hasSpoken = poll(&answer, 1, most) == 1;
    const bool came = hasSpoken && read(ends[0], &run, sizeof run) == sizeof run;
    if (!came) kill(child, SIGKILL);
    close(ends[0]);
    waitpid(child, nullptr, 0);
    const std::optional<double> told = bestTold(printed);
    std::error_code left; // a file left behind does no harm
    fs::remove(printed, left);
    if (came) return {run, {}, {}};
    return hasSpoken ? Cbc{} : Cbc{{}, most / 1000.0, told};
}

/// How many times as long as the planner CBC took for as good a plan as its own; "-" where it has none, and
/// "less" where the planner did not come to one.
std::string timesFaster(const Watched& watched, const Cbc& cbc) {
    if (!cbc.total() || !cbc.seconds()) return "-";
    const auto reached = watched.reached(*cbc.total());
    return reached ? number(*cbc.seconds() / std::max(*reached, 0.001), 0) : "less";
}

void row(const fs::path& folder, const Known& known, double seconds, double cbcSeconds) {
    const auto problem = planner::readProblemFile(folder / known.file);
    if (!problem) {
        std::fprintf(stderr, "%s\n", problem.refusal().text().c_str());
        std::exit(2);
    }
    Watched watched;
    planner::Options options;
    options.seconds = seconds;
    options.progress = [&](const planner::Progress& progress) { watched(progress); };
    const auto solved = planner::solve(*problem, options);
    if (!solved) return;
    const double total = static_cast<double>(solved->answer.cost.total()) / 1000;
    const double bound = static_cast<double>(solved->answer.bound) / 1000;
    std::optional<double> over;
    if (known.optimum) over = 100 * (total - *known.optimum) / std::max(*known.optimum, 1e-9);
    const auto at = [&](double time) {
        const auto found = watched.bounds.find(time);
        return number(found == watched.bounds.end() ? bound : found->second, 2);
    };
    const bool valid = planner::verifyAnswer(*problem, planner::answerText(*problem, solved->answer)).valid();
    const std::string proven =
        solved->ending == planner::Ending::Proven ? number(watched.last, 1) + " s" : "no";
    const auto within = watched.reached(1.01 * known.optimum.value_or(total));
    const Cbc cbc = cbcInTime(*problem, cbcSeconds);
    const auto columns = {known.file,
                          number(known.optimum, 3),
                          number(known.best, 3),
                          number(known.baseline, 3),
                          number(total, 3),
                          std::string(valid ? "yes" : "NO"),
                          number(over, 2),
                          at(1),
                          at(10),
                          number(bound, 2),
                          number(bound > 0 ? std::optional(100 * (total - bound) / bound) : std::nullopt, 1),
                          proven,
                          number(within, 2),
                          cbc.plan(),
                          cbc.run ? number(cbc.run->bound, 2) : "-",
                          number(cbc.seconds(), 1),
                          cbc.proven(),
                          timesFaster(watched, cbc)};
    for (const std::string& column : columns) std::printf("| %s ", column.c_str());
    std::puts("|");
    std::fflush(stdout);
}

int run(int argc, char** argv) {
    if (argc < 2) {
        std::fprintf(stderr, "speed_planner FOLDER [SECONDS [CBC-SECONDS [PART-OF-NAME]]]\n");
        return 2;
    }
    const fs::path folder = argv[1];
    const double seconds = argc > 2 ? std::atof(argv[2]) : 10;
    const double cbcSeconds = argc > 3 ? std::atof(argv[3]) : 60;
    const std::string part = argc > 4 ? argv[4] : "";
    std::printf(
        "Planner %g s on 2 threads, CBC at most %g s on one. CBC counts slots and leaves scatter out, "
        "but for ngcut.\nWithin 1 %%: of the optimum, else of the plan at the end. Times: CBC's seconds by "
        "those "
        "in which the planner had as good a plan.\n\n",
        seconds, cbcSeconds);
    std::puts(
        "| problem | optimum | best known | baseline | plan | valid | over optimum, % | bound at 1 s | at 10 "
        "s "
        "| at end | gap, % | proven | within 1 %, s | CBC plan | CBC bound | CBC s | CBC proven | times |\n"
        "|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (const fs::path& place : {folder, folder / "orlib"})
        for (const Known& known : knownOf(place))
            if (known.file.find(part) != std::string::npos) row(place, known, seconds, cbcSeconds);
    return 0;
}

} // namespace
} // namespace warmbench::speed

int main(int argc, char** argv) {
    return warmbench::speed::run(argc, argv);
}
