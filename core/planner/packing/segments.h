#pragma once

#include <algorithm>
#include <span>
#include <vector>

namespace warmbench::planner::packing {

/// The days at which something begins or ends, so that a zone need be looked at only between them.
class Segments {
public:
    /// Of anything with `from` and `to`, cut to days 0 .. `days`.
    template <class Interval>
    Segments(std::span<const Interval> intervals, int days) : m_cuts{0, days} {
        for (const Interval& interval : intervals) {
            m_cuts.push_back(std::clamp(interval.from, 0, days));
            m_cuts.push_back(std::clamp(interval.to, 0, days));
        }
        std::sort(m_cuts.begin(), m_cuts.end());
        m_cuts.erase(std::unique(m_cuts.begin(), m_cuts.end()), m_cuts.end());
    }

    [[nodiscard]] std::span<const int> cuts() const { return m_cuts; }
    /// The segment that begins on `day`, one of those given; those before and after the horizon count as its
    /// ends.
    [[nodiscard]] int at(int day) const {
        const int cut = std::clamp(day, m_cuts.front(), m_cuts.back());
        return static_cast<int>(std::lower_bound(m_cuts.begin(), m_cuts.end(), cut) - m_cuts.begin());
    }

private:
    std::vector<int> m_cuts;
};

} // namespace warmbench::planner::packing
