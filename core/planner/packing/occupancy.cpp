#include "core/planner/packing/occupancy.h"

#include <algorithm>

namespace warmbench::planner::packing {

Occupancy::Occupancy(const Zone& zone, int days)
    : m_days(days), m_blocked(zone.rows, zone.cols), m_changing(zone.rows, zone.cols) {
    for (int slot = 0; slot < m_blocked.size(); ++slot)
        if (!zone.blocked.empty() && zone.blocked[static_cast<std::size_t>(slot)]) m_blocked.add(slot);
    m_capacity = m_blocked.size() - m_blocked.count();
    m_taken.assign(stride() * static_cast<std::size_t>(days), 0);
    m_free.assign(static_cast<std::size_t>(days), m_capacity);
}

int Occupancy::leastFree(int from, int to) const {
    int least = m_capacity;
    for (int day = std::max(from, 0); day < std::min(to, m_days); ++day) least = std::min(least, freeOn(day));
    return least;
}

bool Occupancy::isFree(const SlotRect& rect, int from, int to) const {
    for (int row = rect.row; row < rect.row + rect.height; ++row)
        for (int col = rect.col; col < rect.col + rect.width; ++col) {
            const int slot = row * cols() + col;
            if (m_blocked.has(slot)) return false;
            const std::size_t word = static_cast<std::size_t>(slot) / 64;
            for (int day = std::max(from, 0); day < std::min(to, m_days); ++day)
                if ((m_taken[static_cast<std::size_t>(day) * stride() + word] >> (slot % 64)) & 1)
                    return false;
        }
    return true;
}

void Occupancy::freeOver(int from, int to, Cells& out) const {
    out = m_blocked;
    const std::size_t words = stride();
    const int first = std::clamp(from, 0, m_days);
    const std::uint64_t* taken = m_taken.data() + static_cast<std::size_t>(first) * words;
    for (int day = first; day < std::min(to, m_days); ++day, taken += words)
        for (std::size_t word = 0; word < words; ++word) out.data()[word] |= taken[word];
    out.complement();
}

void Occupancy::freeOnDay(int day, Cells& out) const {
    freeOver(day, day + 1, out);
}

void Occupancy::change(std::span<const SlotRect> containers, int from, int to, bool taken) {
    const int first = std::max(from, 0);
    const int last = std::min(to, m_days);
    int slots = 0;
    m_changing.clear();
    for (const SlotRect& rect : containers) {
        slots += rect.height * rect.width;
        m_changing.add(rect);
    }
    for (std::size_t word = 0; word < stride(); ++word) {
        const std::uint64_t bits = m_changing.data()[word];
        if (bits == 0) continue;
        for (int day = first; day < last; ++day)
            m_taken[static_cast<std::size_t>(day) * stride() + word] ^= bits;
    }
    for (int day = first; day < last; ++day) m_free[static_cast<std::size_t>(day)] += taken ? -slots : slots;
}

Occupancy Occupancy::condensed(std::span<const int> cuts) const {
    Occupancy out;
    out.m_days = std::max(0, static_cast<int>(cuts.size()) - 1);
    out.m_capacity = m_capacity;
    out.m_blocked = m_blocked;
    out.m_changing = m_changing;
    Cells free;
    for (std::size_t day = 0; day + 1 < cuts.size(); ++day) {
        freeOver(cuts[day], cuts[day + 1], free);
        out.m_free.push_back(free.count());
        for (int word = 0; word < free.words(); ++word)
            out.m_taken.push_back(~free.data()[word] & ~m_blocked.data()[word]);
    }
    return out;
}

void Occupancy::occupy(std::span<const SlotRect> containers, int from, int to) {
    change(containers, from, to, true);
}

void Occupancy::release(std::span<const SlotRect> containers, int from, int to) {
    change(containers, from, to, false);
}

} // namespace warmbench::planner::packing
