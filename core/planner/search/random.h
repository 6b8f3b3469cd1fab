#pragma once

#include <bit>
#include <cstdint>

namespace warmbench::planner::search {

/// A small random generator, the same on every machine (splitmix64, Steele, Lea and Flood 2014).
class Random {
public:
    explicit Random(std::uint64_t seed) : m_state(seed) {}

    std::uint64_t next() {
        m_state += 0x9e3779b97f4a7c15U;
        std::uint64_t mixed = m_state;
        mixed = (mixed ^ (mixed >> 30)) * 0xbf58476d1ce4e5b9U;
        mixed = (mixed ^ (mixed >> 27)) * 0x94d049bb133111ebU;
        return mixed ^ (mixed >> 31);
    }

    /// 0 .. `count` - 1; `count` is at least 1.
    int below(int count) {
        return static_cast<int>(((next() >> 32) * static_cast<std::uint64_t>(count)) >> 32);
    }

    /// True once in `count` times.
    bool onceIn(int count) { return below(count) == 0; }

    /// An exponentially distributed number of mean about 1.04, in units of 1/1024: minus the binary logarithm
    /// of a uniform number by linear interpolation, times ln 2, in integers so that every machine agrees.
    std::int64_t exponential() {
        const std::uint64_t bits = next() | 1U;
        const int zeros = std::countl_zero(bits);
        const std::uint64_t fraction = zeros >= 63 ? 0 : ((bits << (zeros + 1)) >> 54);
        return ((static_cast<std::int64_t>(zeros + 1) * 1024 - static_cast<std::int64_t>(fraction)) * 710) >>
               10;
    }

private:
    std::uint64_t m_state;
};

} // namespace warmbench::planner::search
