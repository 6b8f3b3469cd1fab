#include "core/planner/packing/cells.h"

#include <algorithm>

namespace warmbench::planner::packing {

namespace {

/// The bits `from` to 63 of a word, none when `from` is 64 or more.
std::uint64_t bitsFrom(int from) {
    return from < 64 ? ~std::uint64_t{0} << from : 0;
}

} // namespace

void Cells::reshape(int rows, int cols) {
    m_rows = rows;
    m_cols = cols;
    m_words.assign((static_cast<std::size_t>(size()) + 63) / 64, 0);
}

void Cells::clear() {
    std::fill(m_words.begin(), m_words.end(), std::uint64_t{0});
}

void Cells::fill() {
    std::fill(m_words.begin(), m_words.end(), ~std::uint64_t{0});
    if (size() % 64 != 0) m_words.back() &= ~bitsFrom(size() % 64);
}

void Cells::add(const SlotRect& rect) {
    for (int row = rect.row; row < rect.row + rect.height; ++row)
        for (int col = rect.col; col < rect.col + rect.width; ++col) add(row * m_cols + col);
}

void Cells::remove(const SlotRect& rect) {
    for (int row = rect.row; row < rect.row + rect.height; ++row)
        for (int col = rect.col; col < rect.col + rect.width; ++col) remove(row * m_cols + col);
}

bool Cells::covers(const SlotRect& rect) const {
    for (int row = rect.row; row < rect.row + rect.height; ++row)
        for (int col = rect.col; col < rect.col + rect.width; ++col)
            if (!has(row, col)) return false;
    return true;
}

int Cells::count() const {
    int sum = 0;
    for (const std::uint64_t word : m_words) sum += std::popcount(word);
    return sum;
}

bool Cells::empty() const {
    return std::all_of(m_words.begin(), m_words.end(), [](std::uint64_t word) { return word == 0; });
}

int Cells::next(int slot) const {
    if (slot >= size()) return size();
    std::size_t at = word(slot);
    std::uint64_t rest = m_words[at] & bitsFrom(slot & 63);
    while (rest == 0) {
        if (++at == m_words.size()) return size();
        rest = m_words[at];
    }
    return static_cast<int>(at) * 64 + std::countr_zero(rest);
}

void Cells::unite(const Cells& other) {
    for (std::size_t at = 0; at < m_words.size(); ++at) m_words[at] |= other.m_words[at];
}

void Cells::intersect(const Cells& other) {
    for (std::size_t at = 0; at < m_words.size(); ++at) m_words[at] &= other.m_words[at];
}

void Cells::subtract(const Cells& other) {
    for (std::size_t at = 0; at < m_words.size(); ++at) m_words[at] &= ~other.m_words[at];
}

void Cells::complement() {
    for (std::uint64_t& word : m_words) word = ~word;
    if (size() % 64 != 0) m_words.back() &= ~bitsFrom(size() % 64);
}

void Cells::intersectShiftedDown(int by) {
    const std::size_t skip = static_cast<std::size_t>(by) / 64;
    const int shift = by % 64;
    const std::size_t count = m_words.size();
    for (std::size_t at = 0; at < count; ++at) {
        std::uint64_t moved = at + skip < count ? m_words[at + skip] >> shift : 0;
        if (shift != 0 && at + skip + 1 < count) moved |= m_words[at + skip + 1] << (64 - shift);
        m_words[at] &= moved;
    }
}

void Cells::corners(const Footprint& footprint, Cells& out) const {
    out = *this;
    if (footprint.height > m_rows || footprint.width > m_cols) {
        out.clear();
        return;
    }
    for (int done = 1; done < footprint.width;) {
        const int step = std::min(done, footprint.width - done);
        out.intersectShiftedDown(step);
        done += step;
    }
    for (int done = 1; done < footprint.height;) {
        const int step = std::min(done, footprint.height - done);
        out.intersectShiftedDown(step * m_cols);
        done += step;
    }
    for (int row = 0; row < m_rows; ++row) // a corner too far to the right has wrapped into the next row
        for (int col = m_cols - footprint.width + 1; col < m_cols; ++col) out.remove(row * m_cols + col);
}

void Cells::grown(Cells& out) const {
    out = *this;
    for (int slot = next(0); slot < size(); slot = next(slot + 1)) {
        const int col = slot % m_cols;
        if (col > 0) out.add(slot - 1);
        if (col + 1 < m_cols) out.add(slot + 1);
        if (slot >= m_cols) out.add(slot - m_cols);
        if (slot + m_cols < size()) out.add(slot + m_cols);
    }
}

bool touch(const SlotRect& a, const SlotRect& b) {
    const bool rowsMeet = a.row < b.row + b.height && b.row < a.row + a.height;
    const bool colsMeet = a.col < b.col + b.width && b.col < a.col + a.width;
    const bool sideBySide = a.col + a.width == b.col || b.col + b.width == a.col;
    const bool oneAboveOther = a.row + a.height == b.row || b.row + b.height == a.row;
    return (rowsMeet && sideBySide) || (colsMeet && oneAboveOther);
}

int groups(const std::vector<SlotRect>& containers) {
    // Most often each stands by the one before it.
    const auto apart = std::adjacent_find(containers.begin(), containers.end(),
                                          [](const SlotRect& a, const SlotRect& b) { return !touch(a, b); });
    if (apart == containers.end()) return containers.empty() ? 0 : 1;
    std::vector<char> reached(containers.size(), 0);
    std::vector<std::size_t> edge;
    int count = 0;
    for (std::size_t first = 0; first < containers.size(); ++first) {
        if (reached[first]) continue;
        ++count;
        reached[first] = 1;
        edge.assign(1, first);
        while (!edge.empty()) {
            const SlotRect at = containers[edge.back()];
            edge.pop_back();
            for (std::size_t other = first + 1; other < containers.size(); ++other)
                if (!reached[other] && touch(at, containers[other])) {
                    reached[other] = 1;
                    edge.push_back(other);
                }
        }
    }
    return count;
}

} // namespace warmbench::planner::packing
