#pragma once

#include "core/quantity/day.h"

#include <algorithm>
#include <map>
#include <utility>
#include <vector>

namespace warmbench {

/// Stretches of days (from <= day < to), each with an id, ordered by their first day: those that meet others
/// are found without looking at all of them.
template <class Id>
class Spans {
public:
    void add(Day from, Day to, Id id) {
        m_ends.emplace(std::pair(from, id), to);
        m_longest = std::max(m_longest, to - from);
    }
    void remove(Day from, Id id) { m_ends.erase({from, id}); }

    /// Those that share a day with from <= day < to, by first day.
    [[nodiscard]] std::vector<Id> meeting(Day from, Day to) const {
        std::vector<Id> found;
        for (auto span = m_ends.lower_bound({from - m_longest, Id{}}); span != m_ends.end(); ++span) {
            if (span->first.first >= to) break;
            if (span->second > from) found.push_back(span->first.second);
        }
        return found;
    }

private:
    std::map<std::pair<Day, Id>, Day> m_ends;
    int m_longest = 0; ///< days that no stretch is longer than
};

} // namespace warmbench
