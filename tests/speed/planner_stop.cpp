#include "core/planner/planner.h"
#include "grown.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <stop_token>
#include <thread>
#include <vector>

/// How long the planner takes to answer after it was asked to stop, at many moments of its work:
/// speed_planner_stop PROBLEM [BATCHES [MOMENTS [LAST-SECOND]]]. The problem is put together from copies up
/// to BATCHES.
namespace warmbench::speed {
namespace {

using Clock = std::chrono::steady_clock;

/// Seconds from the request to the answer.
double delayOf(const planner::Problem& problem, double moment, double& total) {
    std::stop_source source;
    Clock::time_point asked;
    const std::jthread asking([&] {
        std::this_thread::sleep_for(std::chrono::duration<double>(moment));
        asked = Clock::now();
        source.request_stop();
    });
    planner::Options options;
    options.seconds = 1000;
    const auto solved = planner::solve(problem, options, source.get_token());
    const auto answered = Clock::now();
    total = solved ? static_cast<double>(solved->answer.cost.total()) / 1000 : -1;
    return source.stop_requested() ? std::chrono::duration<double>(answered - asked).count() : 0;
}

int run(int argc, char** argv) {
    if (argc < 2) {
        std::fprintf(stderr, "speed_planner_stop PROBLEM [BATCHES [MOMENTS [LAST-SECOND]]]\n");
        return 2;
    }
    const auto one = problemIn(argv[1]);
    if (!one) return 2;
    const int batches = argc > 2 ? std::atoi(argv[2]) : static_cast<int>(one->batches.size());
    const int moments = argc > 3 ? std::atoi(argv[3]) : 20;
    const double last = argc > 4 ? std::atof(argv[4]) : 2;
    const planner::Problem problem = grown(*one, batches);
    std::puts("| stopped at, s | answer after, ms | total |\n|---|---|---|");
    std::vector<double> delays;
    for (int i = 1; i <= moments; ++i) {
        const double moment = last * i / moments;
        double total = 0;
        delays.push_back(1000 * delayOf(problem, moment, total));
        std::printf("| %.3f | %.1f | %.3f |\n", moment, delays.back(), total);
        std::fflush(stdout);
    }
    std::sort(delays.begin(), delays.end());
    std::printf("\nmedian %.1f ms, longest %.1f ms\n", delays[delays.size() / 2], delays.back());
    return 0;
}

} // namespace
} // namespace warmbench::speed

int main(int argc, char** argv) {
    return warmbench::speed::run(argc, argv);
}
