#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

/// Days of a horizon as bits of words, so that many of them are looked at with one operation.
namespace warmbench::planner::search {

using DayWord = std::uint64_t;
inline constexpr int daysOfWord = 64;

/// Words that hold so many days.
[[nodiscard]] constexpr std::size_t wordsOf(int days) {
    return static_cast<std::size_t>((days + daysOfWord - 1) / daysOfWord);
}

/// Of the days of word `word`, those of [from, to).
[[nodiscard]] inline DayWord daysWithin(std::size_t word, int from, int to) {
    const int first = static_cast<int>(word) * daysOfWord;
    const auto below = [first](int day) -> DayWord {
        if (day <= first) return 0;
        return day >= first + daysOfWord ? ~DayWord{0} : (DayWord{1} << (day - first)) - 1;
    };
    return below(to) & ~below(from);
}

/// How many days of [from, to), which is not empty, are set.
[[nodiscard]] inline int countDays(std::span<const DayWord> bits, int from, int to) {
    int count = 0;
    const std::size_t last = wordsOf(to);
    for (std::size_t word = static_cast<std::size_t>(from / daysOfWord); word < last; ++word)
        count += std::popcount(bits[word] & daysWithin(word, from, to));
    return count;
}

/// Sets every day from which a run of `length` days meets one that was set.
inline void spreadBack(std::span<DayWord> bits, int length) {
    for (int spread = 1; spread < length;) {
        const int step = spread < length - spread ? spread : length - spread;
        const auto words = static_cast<std::size_t>(step / daysOfWord);
        const int rest = step % daysOfWord;
        for (std::size_t word = 0; word + words < bits.size(); ++word) {
            const DayWord low = bits[word + words] >> rest;
            const bool isSplit = rest > 0 && word + words + 1 < bits.size();
            bits[word] |= isSplit ? low | bits[word + words + 1] << (daysOfWord - rest) : low;
        }
        spread += step;
    }
}

/// The same for days of one word, and a run that is not longer.
inline void spreadBack(DayWord& bits, int length) {
    for (int spread = 1; spread < length;) {
        const int step = spread < length - spread ? spread : length - spread;
        bits |= bits >> step;
        spread += step;
    }
}

/// Up to 64 days of rows, from one day on, within a horizon.
class DayWindow {
public:
    DayWindow(int first, int days)
        : m_word(static_cast<std::size_t>(first / daysOfWord)), m_shift(first % daysOfWord) {
        const int left = days - first;
        m_within = left >= daysOfWord ? ~DayWord{0} : (DayWord{1} << (left > 0 ? left : 0)) - 1;
    }
    /// Where it begins in a row.
    [[nodiscard]] std::size_t word() const { return m_word; }
    /// Its days out of the word of a row where it begins and the next.
    [[nodiscard]] DayWord of(DayWord word, DayWord next) const {
        return word >> m_shift | next << 1 << (daysOfWord - 1 - m_shift);
    }
    /// Those that the horizon has.
    [[nodiscard]] DayWord within() const { return m_within; }

private:
    std::size_t m_word;
    int m_shift;
    DayWord m_within;
};

/// Rows of days, such as one a zone.
class DayRows {
public:
    DayRows() = default;
    DayRows(std::size_t rows, int days) : m_words(wordsOf(days)), m_bits(rows * m_words + 1, 0) {}

    [[nodiscard]] std::span<const DayWord> row(std::size_t row) const {
        return {m_bits.data() + row * m_words, m_words};
    }
    /// Words of a row; after them one more may be read.
    [[nodiscard]] const DayWord* words(std::size_t row) const { return m_bits.data() + row * m_words; }
    /// Sets all days of a row, and those that fill up its last word.
    void set(std::size_t row) {
        for (std::size_t word = 0; word < m_words; ++word) m_bits[row * m_words + word] = ~DayWord{0};
    }
    void flip(std::size_t row, int day) {
        m_bits[row * m_words + static_cast<std::size_t>(day / daysOfWord)] ^= DayWord{1}
                                                                              << (day % daysOfWord);
    }
    /// The days of [from, to), which is not empty.
    void flip(std::size_t row, int from, int to) {
        const std::size_t end = wordsOf(to);
        for (auto word = static_cast<std::size_t>(from / daysOfWord); word < end; ++word)
            m_bits[row * m_words + word] ^= daysWithin(word, from, to);
    }

private:
    std::size_t m_words = 0;
    std::vector<DayWord> m_bits;
};

} // namespace warmbench::planner::search
