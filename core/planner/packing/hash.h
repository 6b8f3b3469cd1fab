#pragma once

#include <cstdint>

namespace warmbench::planner::packing {

/// A hash of 64 bits of the values mixed in, by the finalizer of SplitMix64 (Steele, Lea and Flood 2014).
class Hash {
public:
    void mix(std::uint64_t value) {
        m_sum += value + 0x9e3779b97f4a7c15U;
        m_sum = (m_sum ^ (m_sum >> 30)) * 0xbf58476d1ce4e5b9U;
        m_sum = (m_sum ^ (m_sum >> 27)) * 0x94d049bb133111ebU;
        m_sum ^= m_sum >> 31;
    }
    [[nodiscard]] std::uint64_t value() const { return m_sum; }

private:
    std::uint64_t m_sum = 0;
};

} // namespace warmbench::planner::packing
