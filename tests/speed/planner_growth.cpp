#include "core/planner/planner.h"
#include "grown.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>
#include <vector>

/// How time per round and memory grow with the number of batches, on houses put together from copies of one
/// problem: speed_planner_growth PROBLEM [PICTURE.svg [SECONDS]]. Prints a table; draws it where a file is
/// named.
namespace warmbench::speed {
namespace {

constexpr int sizes[] = {50, 100, 200, 400, 800, 1500, 3000};

struct Point {
    int batches = 0;
    double milliseconds = 0; ///< a round
    double megabytes = 0;    ///< peak of the process
    double rounds = 0;
};

/// In a process of its own, whose peak of memory is then that of this size.
Point measured(const planner::Problem& one, int batches, double seconds) {
    int ends[2];
    if (pipe(ends) != 0) std::exit(3);
    const pid_t child = fork();
    if (child == 0) {
        const planner::Problem problem = grown(one, batches);
        planner::Options options;
        options.seconds = seconds;
        double last = 0;
        options.progress = [&](const planner::Progress& progress) { last = progress.seconds; };
        const auto solved = planner::solve(problem, options);
        const double figures[] = {last, solved ? static_cast<double>(solved->rounds) : 0};
        const auto written = write(ends[1], figures, sizeof figures);
        _exit(written == sizeof figures ? 0 : 3);
    }
    double figures[2] = {0, 0};
    const auto got = read(ends[0], figures, sizeof figures);
    close(ends[0]);
    close(ends[1]);
    int status = 0;
    rusage used{};
    if (wait4(child, &status, 0, &used) != child || status != 0 || got != sizeof figures) std::exit(3);
    return {batches, 1000 * figures[0] / std::max(1.0, figures[1]),
            static_cast<double>(used.ru_maxrss) / 1024, figures[1]};
}

/// One curve on logarithmic axes, powers of ten marked.
std::string curve(const std::vector<Point>& points, double Point::*value, int left, const char* title) {
    constexpr double width = 300;
    constexpr double height = 240;
    constexpr double top = 50;
    double least = 1e300;
    double most = 0;
    for (const Point& point : points) {
        least = std::min(least, point.*value);
        most = std::max(most, point.*value);
    }
    const double low = std::floor(std::log10(least));
    const double high = std::max(low + 1, std::ceil(std::log10(most)));
    const auto x = [&](double batches) {
        return left +
               width * (std::log10(batches) - std::log10(40.0)) / (std::log10(4000.0) - std::log10(40.0));
    };
    const auto y = [&](double v) { return top + height * (high - std::log10(v)) / (high - low); };
    char text[400];
    std::string svg;
    const auto add = [&](const char* format, auto... parts) {
        std::snprintf(text, sizeof text, format, parts...);
        svg += text;
    };
    add("<text x='%d' y='30' font-size='14'>%s</text>\n", left, title);
    for (double power = low; power <= high; ++power) {
        add("<line x1='%d' x2='%.0f' y1='%.1f' y2='%.1f' stroke='#ccc'/>\n", left, left + width,
            y(std::pow(10, power)), y(std::pow(10, power)));
        add("<text x='%d' y='%.1f' text-anchor='end'>%g</text>\n", left - 6, y(std::pow(10, power)) + 4,
            std::pow(10, power));
    }
    std::string line;
    for (const Point& point : points) {
        std::snprintf(text, sizeof text, "%.1f,%.1f ", x(point.batches), y(point.*value));
        line += text;
        add("<text x='%.1f' y='%.1f' text-anchor='middle'>%d</text>\n", x(point.batches), top + height + 18,
            point.batches);
        add("<circle cx='%.1f' cy='%.1f' r='3.5' fill='#1f5f8b'/>\n", x(point.batches), y(point.*value));
    }
    svg += "<polyline points='" + line + "' fill='none' stroke='#1f5f8b' stroke-width='2'/>\n";
    add("<text x='%.0f' y='%.0f' text-anchor='middle'>batches</text>\n", left + width / 2, top + height + 38);
    return svg;
}

void draw(const std::vector<Point>& points, const char* file) {
    std::ofstream(file)
        << "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 780 340' font-family='sans-serif' "
           "font-size='11'>\n<rect width='780' height='340' fill='white'/>\n"
        << curve(points, &Point::milliseconds, 60, "Milliseconds a round of the search")
        << curve(points, &Point::megabytes, 450, "Megabytes at the most, bound included") << "</svg>\n";
}

int run(int argc, char** argv) {
    if (argc < 2) {
        std::fprintf(stderr, "speed_planner_growth PROBLEM [PICTURE.svg [SECONDS]]\n");
        return 2;
    }
    const auto one = problemIn(argv[1]);
    if (!one) return 2;
    const double seconds = argc > 3 ? std::atof(argv[3]) : 10;
    std::puts("| batches | rounds | ms a round | peak MB |\n|---|---|---|---|");
    std::vector<Point> points;
    for (const int size : sizes) {
        points.push_back(measured(*one, size, seconds));
        const Point& point = points.back();
        std::printf("| %d | %.0f | %.3f | %.0f |\n", size, point.rounds, point.milliseconds, point.megabytes);
        std::fflush(stdout);
    }
    if (argc > 2) draw(points, argv[2]);
    return 0;
}

} // namespace
} // namespace warmbench::speed

int main(int argc, char** argv) {
    return warmbench::speed::run(argc, argv);
}
