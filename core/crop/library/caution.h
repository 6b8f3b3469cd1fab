#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// What a public list says of a genus, or of some plants of it. The lists are weak and short.
struct Caution {
    std::string plants; ///< as the list prints them, such as `Rhus / Toxicodendron`
    std::string hazard;
    std::string category; ///< of the list; may be empty
    std::string parts;    ///< of the plant
    std::string source;   ///< id of a source, or a mark
    std::string evidence;
    std::vector<std::string> genera; ///< keys of all names with a capital in `plants`

    [[nodiscard]] bool concerns(std::string_view genus) const;
};

/// Stands with every caution, and where there is none.
inline constexpr const char* cautionIsNoPromise =
    "From short public lists, never a promise that a plant is safe: treat an unknown sap as irritant.";

/// The keys (nameKey) of the names that start with a capital letter in words such as
/// `Berberis / Pyracantha / Ulex / Rosa`.
[[nodiscard]] std::vector<std::string> generaNamedIn(std::string_view plants);

} // namespace warmbench
