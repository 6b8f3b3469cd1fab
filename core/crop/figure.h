#pragma once

#include <string>

namespace warmbench {

/// Where a figure comes from when no publication stands behind it.
inline constexpr const char* fromMemory = "from memory";
inline constexpr const char* commonPractice = "common practice, no source";
inline constexpr const char* ownFigure = "own figure";

/// A recipe's figure and where it comes from: the id of a published source, one of the marks above, or
/// `derived: ...` with the derivation.
template <class T>
struct Figure {
    T value{};
    std::string source;
    friend bool operator==(const Figure&, const Figure&) = default;
};

} // namespace warmbench
