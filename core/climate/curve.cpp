#include "core/climate/curve.h"

#include "core/climate/thermal_time.h"

#include <algorithm>
#include <cmath>

namespace warmbench::climate {
namespace {

constexpr double minutesPerHour = 60;

/// Collects points, and begins a new line after a gap.
class Lines {
public:
    void add(double minute, double value, bool afterGap) {
        if (m_lines.empty() || afterGap) m_lines.emplace_back();
        m_lines.back().push_back({minute, value});
    }
    [[nodiscard]] std::vector<std::vector<CurvePoint>> take() { return std::move(m_lines); }

private:
    std::vector<std::vector<CurvePoint>> m_lines;
};

bool isGap(const MinuteReading& before, const MinuteReading& after) {
    return after.minute - before.minute > longestStep * minutesPerHour;
}

std::vector<std::vector<CurvePoint>> everyReading(std::span<const MinuteReading> readings) {
    Lines lines;
    for (std::size_t i = 0; i < readings.size(); ++i)
        lines.add(readings[i].minute, readings[i].units(), i > 0 && isGap(readings[i - 1], readings[i]));
    return lines.take();
}

} // namespace

std::vector<std::vector<CurvePoint>> curvesOf(std::span<const MinuteReading> readings, double from, double to,
                                              int columns) {
    const auto before = [](const MinuteReading& reading, double minute) { return reading.minute < minute; };
    auto first = std::lower_bound(readings.begin(), readings.end(), from, before);
    auto last = std::lower_bound(first, readings.end(), to, before);
    if (first != readings.begin()) --first;
    if (last != readings.end()) ++last;
    const std::span<const MinuteReading> seen(first, last);
    constexpr std::size_t pointsAColumn = 2;
    if (columns < 1 || to <= from) return {};
    if (seen.size() <= pointsAColumn * static_cast<std::size_t>(columns)) return everyReading(seen);
    const double width = (to - from) / columns;
    Lines lines;
    for (std::size_t i = 0; i < seen.size();) {
        const double column = std::floor((seen[i].minute - from) / width);
        const bool afterGap = i > 0 && isGap(seen[i - 1], seen[i]);
        std::size_t lowest = i;
        std::size_t highest = i;
        std::size_t end = i + 1;
        for (; end < seen.size() && seen[end].minute < from + (column + 1) * width; ++end) {
            if (isGap(seen[end - 1], seen[end])) break;
            if (seen[end].value < seen[lowest].value) lowest = end;
            if (seen[end].value > seen[highest].value) highest = end;
        }
        const std::size_t one = std::min(lowest, highest);
        const std::size_t other = std::max(lowest, highest);
        lines.add(seen[one].minute, seen[one].units(), afterGap);
        if (other != one) lines.add(seen[other].minute, seen[other].units(), false);
        i = end;
    }
    return lines.take();
}

} // namespace warmbench::climate
