#include "core/planner/bound/day_packing.h"

#include <algorithm>

namespace warmbench::planner {

void DayPacking::clear(int slots) {
    m_items.clear();
    m_width = static_cast<std::size_t>(std::max(0, slots)) + 1;
    m_best.assign(m_width, 0);
}

void DayPacking::add(int name, int slots, double value) {
    const auto size = static_cast<std::size_t>(slots);
    if (size >= m_width) return;
    const std::size_t start = m_best.size();
    m_best.resize(start + m_width);
    const double* before = m_best.data() + start - m_width;
    double* after = m_best.data() + start;
    std::copy_n(before, size, after);
    for (std::size_t used = size; used < m_width; ++used)
        after[used] = std::max(before[used], before[used - size] + value);
    m_items.push_back({name, slots});
}

double DayPacking::best(int slots) const {
    return row(m_items.size())[static_cast<std::size_t>(slots)];
}

void DayPacking::chosen(int slots, std::vector<int>& names) const {
    auto left = static_cast<std::size_t>(slots);
    for (std::size_t i = m_items.size(); i-- > 0;) {
        if (row(i + 1)[left] == row(i)[left]) continue;
        names.push_back(m_items[i].name);
        left -= static_cast<std::size_t>(m_items[i].slots);
    }
}

} // namespace warmbench::planner
